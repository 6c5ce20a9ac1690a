// Two bulbs, a slanted neck, a gate at the side of the larger one and a sprue, in a block that is
// symmetric about none of them. Lengths in mm. Set n on the command line: edges round a circle.
//
// A sphere or cylinder made of flat facets between points on it is too small, by h^2/8R and h^2/16R
// in the mean for facets of edge h = 2 pi R / n; the radii are enlarged by just that.
SetFactory("OpenCASCADE");
If (!Exists(n))
  n = 40;
EndIf
ball = 1 + Pi * Pi / (2 * n * n);
bar = 1 + Pi * Pi / (4 * n * n);

Sphere(1) = {0, 0, 0, 6 * ball};
Sphere(2) = {14, 6, 0, 4.5 * ball};
Cylinder(3) = {0, 0, 0, 14, 6, 0, 2 * bar};
Cylinder(4) = {0, 0, 0, 0, -9, 0, 1.5 * bar};
Cylinder(5) = {0, -9, 0, 0, -15, 0, 4 * bar};
BooleanUnion(10) = { Volume{1}; Delete; }{ Volume{2:5}; Delete; };
Box(20) = {-18, -24, -12, 44, 44, 29};
parts() = BooleanFragments{ Volume{20}; Delete; }{ Volume{10}; Delete; };

Physical Volume("plastisol", 1) = {10};
outside() = parts();
outside() -= {10};
Physical Volume("mould", 2) = {outside()};

Mesh.MeshSizeFromCurvature = n;
Mesh.MeshSizeMax = 6;
Mesh.Algorithm3D = 1;
Mesh.Optimize = 1;
Mesh.MshFileVersion = 2.2;

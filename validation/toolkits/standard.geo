// The standard case (../src/main/resources/gelfront/validation/standard-case.json) for tetrahedra
// that follow its walls. Lengths in mm. Set on the command line: size, edges in the plastisol and
// on its walls; fine, edges at the gate. In the metal they grow with the distance from the wall.
SetFactory("OpenCASCADE");
If (!Exists(size))
  size = 0.6;
EndIf
If (!Exists(fine))
  fine = 0.3;
EndIf

Cone(1) = {0, 0, 0, 10, 0, 0, 2.5, 5};
Cone(2) = {10, 0, 0, 30, 0, 0, 5, 7};
Cone(3) = {40, 0, 0, 25, 0, 0, 7, 3};
Cone(4) = {65, 0, 0, 20, 0, 0, 3, 5};
Cone(5) = {85, 0, 0, 12, 0, 0, 5, 3};
Cone(6) = {97, 0, 0, 3, 0, 0, 3, 0.8};
Cylinder(7) = {-3, 0, 0, 3, 0, 0, 1.5};
Cylinder(8) = {-33, 0, 0, 30, 0, 0, 5};
Box(20) = {-33, -22, -22, 148, 44, 44};
all() = BooleanFragments{ Volume{20}; Delete; }{ Volume{1:8}; Delete; };

// Numbers of the pieces are kept: 1 to 8 lie in the box, which is whatever else there is.
metal() = all();
metal() -= {1:8};
Physical Volume("plastisol", 1) = {1:8};
Physical Volume("mould", 2) = metal();
shared() = CombinedBoundary{ Volume{1:8}; };
outer() = CombinedBoundary{ Volume{all()}; };
wall() = Abs(shared());
wall() -= Abs(outer());
Physical Surface("wall", 1) = wall();
mouth() = Abs(shared());
mouth() -= wall();
block() = Abs(outer());
block() -= mouth();
Physical Surface("block to air", 2) = block();

Field[1] = Distance;
Field[1].SurfacesList = {wall()};
Field[1].NumPointsPerCurve = 60;
Field[2] = MathEval;
Field[2].F = Sprintf("%g + 0.35 * F1", size);
Field[3] = Ball;
Field[3].XCenter = -1.5;
Field[3].Radius = 2.2;
Field[3].Thickness = 3;
Field[3].VIn = fine;
Field[3].VOut = 8;
Field[4] = Cylinder;
Field[4].XCenter = 33.5;
Field[4].XAxis = 67;
Field[4].Radius = 7.1;
Field[4].VIn = size;
Field[4].VOut = 8;
Field[5] = Min;
Field[5].FieldsList = {2, 3, 4};
Background Field = 5;
Mesh.MeshSizeExtendFromBoundary = 0;
Mesh.MeshSizeFromPoints = 0;
Mesh.MeshSizeMax = 8;
Mesh.Algorithm3D = 1;
Mesh.Optimize = 1;
Mesh.MshFileVersion = 2.2;

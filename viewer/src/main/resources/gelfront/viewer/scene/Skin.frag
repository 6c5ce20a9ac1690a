#import "Common/ShaderLib/GLSLCompat.glsllib"
#ifdef FILLED
#import "gelfront/viewer/scene/Cut.glsllib"
uniform vec3 g_CameraPosition;
#endif

uniform vec4 m_Color;
uniform vec4 m_Plane;
#ifdef PALETTE
uniform sampler2D m_Palette;
uniform float m_Deeper;
#endif
uniform float m_Time;
varying vec3 place;
varying vec3 normal;
varying vec3 toEye;
varying float value;

// What is seen of the wall from within. A line of sight that meets it from there has come in through
// the cut: it is coloured as the cut is at that place, so the cut ends where the mesh does.
vec3 fromWithin() {
#ifdef FILLED
  vec3 way = place - g_CameraPosition;
  float along = (m_Plane.w - dot(m_Plane.xyz, g_CameraPosition)) / dot(m_Plane.xyz, way);
  if (along > 0.0 && along < 1.0) {
    return cutColour(inside(g_CameraPosition + along * way), m_Time);
  }
#endif
  return m_Color.rgb * 0.28;
}

// A lamp at the eye.
void main() {
  if (dot(m_Plane.xyz, place) < m_Plane.w) {
    discard;
  }
  vec3 n = normal;
#ifdef PALETTE
  // Pulled-in places lean otherwise than the mesh: their slope is taken from the picture.
  if (m_Deeper > 0.0) {
    n = mix(normalize(n), normalize(cross(dFdx(toEye), dFdy(toEye))), 0.7);
  }
  vec3 base = texture2D(m_Palette, vec2((value * 255.0 + 0.5) / 256.0, 0.5)).rgb;
  if (m_Time >= 0.0 && value > m_Time) {
    base = m_Color.rgb;
  }
#else
  vec3 base = m_Color.rgb;
#endif
  float facing = abs(dot(normalize(n), normalize(toEye)));
  float light = 0.50 + 0.50 * facing;
  gl_FragColor = vec4(gl_FrontFacing ? base * light : fromWithin(), m_Color.a);
}

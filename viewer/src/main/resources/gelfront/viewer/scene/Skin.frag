#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform vec4 m_Color;
uniform vec4 m_Plane;
#ifdef PALETTE
uniform sampler2D m_Palette;
uniform float m_Deeper;
uniform float m_Time;
#endif
varying vec3 place;
varying vec3 normal;
varying vec3 toEye;
varying float value;

// A lamp at the eye. Where the body is cut open, its inside is dark.
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
  gl_FragColor = vec4(gl_FrontFacing ? base * light : m_Color.rgb * 0.28, m_Color.a);
}

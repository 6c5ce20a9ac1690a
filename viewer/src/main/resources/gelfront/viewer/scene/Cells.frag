#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform vec4 m_Plane;
uniform sampler2D m_Palette;
varying vec3 place;
varying float share;
flat in float shade;

void main() {
  if (dot(m_Plane.xyz, place) < m_Plane.w) {
    discard;
  }
  vec3 ramp = texture2D(m_Palette, vec2((share * 255.0 + 0.5) / 256.0, 0.5)).rgb;
  gl_FragColor = vec4(shade * ramp, 1.0);
}

#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform sampler3D m_Volume;
uniform sampler2D m_Palette;
uniform vec3 m_Low;
uniform vec3 m_Size;
uniform float m_Time;
uniform float m_From;
uniform vec4 m_Liquid;
uniform vec4 m_Shut;
varying vec3 place;

// The cut face: when it sets by the ramp; at a time, what is liquid in one colour, and hatched
// where it has been cut off.
void main() {
  vec3 at = (place - m_Low) / m_Size;
  if (any(lessThan(at, vec3(0.0))) || any(greaterThan(at, vec3(1.0)))) {
    discard;
  }
  vec4 v = texture(m_Volume, at);
  if (v.b < 0.5 || v.r < m_From) {
    discard;
  }
  vec3 ramp = texture2D(m_Palette, vec2((v.r * 255.0 + 0.5) / 256.0, 0.5)).rgb;
  vec3 colour = ramp;
  if (m_Time >= 0.0 && v.r > m_Time) {
    float stripe = step(0.5, fract((gl_FragCoord.x + gl_FragCoord.y) / 9.0));
    colour = v.g > m_Time ? m_Liquid.rgb : mix(m_Liquid.rgb, m_Shut.rgb, stripe);
  }
  // At the body's edge a neighbour lies outside and says nothing of the slope: no line there.
  if (m_Time > 0.0 && abs(v.r - m_Time) < 1.2 * min(fwidth(v.r), 0.02)) {
    colour = vec3(0.06, 0.07, 0.08);
  }
  gl_FragColor = vec4(colour, 1.0);
}

#import "Common/ShaderLib/GLSLCompat.glsllib"
#import "gelfront/viewer/scene/Cut.glsllib"

uniform float m_Time;
uniform float m_From;
uniform float m_Least;
varying vec3 place;

void main() {
  vec3 at = (place - m_Low) / m_Size;
  if (any(lessThan(at, vec3(0.0))) || any(greaterThan(at, vec3(1.0)))) {
    discard;
  }
  vec4 v = inside(place);
  if (v.b < m_Least || v.r < m_From) {
    discard;
  }
  gl_FragColor = vec4(cutColour(v, m_Time), 1.0);
}

#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform vec4 m_Color;
varying vec3 normal;
varying vec3 toEye;

// Glass: nearly clear where it faces the eye, a rim where it turns away.
void main() {
  float facing = abs(dot(normalize(normal), normalize(toEye)));
  float rim = (1.0 - facing) * (1.0 - facing);
  gl_FragColor = vec4(m_Color.rgb, m_Color.a * mix(0.03, 0.6, rim));
}

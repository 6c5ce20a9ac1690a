#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform mat4 g_WorldViewProjectionMatrix;
uniform mat4 g_WorldViewMatrix;
uniform mat3 g_NormalMatrix;
attribute vec3 inPosition;
attribute vec3 inNormal;
varying vec3 normal;
varying vec3 toEye;

void main() {
  normal = g_NormalMatrix * inNormal;
  toEye = -(g_WorldViewMatrix * vec4(inPosition, 1.0)).xyz;
  gl_Position = g_WorldViewProjectionMatrix * vec4(inPosition, 1.0);
}

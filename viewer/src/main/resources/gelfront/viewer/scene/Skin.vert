#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform mat4 g_WorldViewProjectionMatrix;
uniform mat4 g_WorldViewMatrix;
uniform mat3 g_NormalMatrix;
uniform float m_Deeper;
attribute vec3 inPosition;
attribute vec3 inNormal;
attribute vec2 inTexCoord;
varying vec3 place;
varying vec3 normal;
varying vec3 toEye;
varying float value;

// x of the texture coordinate is what is coloured, y how many mm a place is pulled in.
void main() {
  place = inPosition - m_Deeper * inTexCoord.y * inNormal;
  value = inTexCoord.x;
  normal = g_NormalMatrix * inNormal;
  toEye = -(g_WorldViewMatrix * vec4(place, 1.0)).xyz;
  gl_Position = g_WorldViewProjectionMatrix * vec4(place, 1.0);
}

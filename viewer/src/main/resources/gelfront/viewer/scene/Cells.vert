#import "Common/ShaderLib/GLSLCompat.glsllib"

uniform mat4 g_WorldViewProjectionMatrix;
uniform float m_From;
attribute vec3 inPosition;
attribute vec3 inNormal;
varying vec3 place;
varying float share;
flat out float shade;

// x and y of the "normal" are the times of the earlier and the later cell, z the side the face
// looks to. A face that isn't seen at the slider's place is drawn at one point: not at all.
void main() {
  int side = int(inNormal.z + 0.5);
  shade = side == 0 ? 0.84 : side == 1 ? 1.0 : side == 2 ? 1.0 : side == 3 ? 0.88
      : side == 4 ? 0.78 : 0.93;
  place = inPosition;
  share = inNormal.y;
  bool seen = inNormal.x < m_From && m_From <= inNormal.y;
  gl_Position = seen
      ? g_WorldViewProjectionMatrix * vec4(inPosition, 1.0)
      : vec4(2.0, 2.0, 2.0, 1.0);
}

uniform mat4 g_WorldViewProjectionMatrix;
uniform mat3 g_NormalMatrix;
in vec3 inPosition;
in vec3 inNormal;
#ifdef VERTEX_TINT
in vec4 inColor;
centroid out vec4 colour;
#endif
#ifdef MOVING
uniform float m_Amount;
in vec3 inTexCoord;
#endif
centroid out vec3 normal;

void main() {
  vec3 at = inPosition;
#ifdef MOVING
  at += m_Amount * inTexCoord;
#endif
#ifdef VERTEX_TINT
  colour = inColor;
#endif
  normal = g_NormalMatrix * inNormal;
  gl_Position = g_WorldViewProjectionMatrix * vec4(at, 1.0);
}

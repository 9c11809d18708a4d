uniform vec4 m_Tint;
uniform float m_Opacity;
uniform float m_Shade;
centroid in vec3 normal;
#ifdef VERTEX_TINT
centroid in vec4 colour;
#endif
out vec4 outFragColor;

void main() {
#ifdef VERTEX_TINT
  vec3 base = colour.rgb;
#else
  vec3 base = m_Tint.rgb;
#endif
  vec3 n = normalize(normal);
  // A lamp at the viewer's left shoulder, and less from the right; Shade 0 leaves the colour flat.
  float key = max(0.0, dot(n, normalize(vec3(-0.45, 0.6, 0.75))));
  float fill = max(0.0, dot(n, normalize(vec3(0.7, -0.2, 0.6))));
  float light = 0.55 + 0.45 * key + 0.15 * fill;
  outFragColor = vec4(base * mix(1.0, light, m_Shade), m_Opacity);
}

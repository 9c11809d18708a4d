package org.midlateral.viewer.render;

import com.jme3.asset.AssetManager;
import com.jme3.material.Material;
import com.jme3.material.RenderState;
import com.jme3.material.RenderState.BlendMode;
import com.jme3.material.RenderState.FaceCullMode;
import com.jme3.math.ColorRGBA;
import com.jme3.renderer.queue.RenderQueue.Bucket;
import com.jme3.scene.Geometry;
import com.jme3.scene.Mesh;
import com.jme3.scene.VertexBuffer;
import com.jme3.util.BufferUtils;
import java.awt.Color;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Builds what the renderer draws from the items of a picture; meshes of the last one are used
 * again.
 */
final class GeometryBuilder {
  private final AssetManager assets;
  private Map<MeshKey, Mesh> meshes = new HashMap<>();

  /** What a mesh on the graphics card was made from, told apart by identity. */
  private record MeshKey(
      SurfaceShape shape,
      SceneItem.VertexColours colours,
      SceneItem.VertexDisplacements displacements) {}

  GeometryBuilder(AssetManager assets) {
    this.assets = assets;
  }

  /** Geometries of all items of a picture. */
  List<Geometry> build(List<SceneItem> items) {
    Map<MeshKey, Mesh> used = new HashMap<>();
    List<Geometry> geometries = new ArrayList<>();
    for (SceneItem item : items) {
      MeshKey key = new MeshKey(item.shape(), item.look().colours(), item.displacements());
      Mesh known = meshes.get(key);
      Mesh mesh = used.computeIfAbsent(key, any -> known == null ? mesh(key) : known);
      if (item.look().opacity() < 1) {
        geometries.add(place(item, mesh, depthOnly(item), 2 * geometries.size()));
        geometries.add(place(item, mesh, seeThrough(item), 2 * geometries.size()));
      } else {
        geometries.add(place(item, mesh, material(item), 0));
      }
    }
    meshes = used;
    return geometries;
  }

  private static Geometry place(SceneItem item, Mesh mesh, Material material, int rank) {
    Geometry geometry = new Geometry(item.name(), mesh);
    geometry.setMaterial(material);
    geometry.setLocalTranslation(
        (float) item.place().getX(), (float) item.place().getY(), (float) item.place().getZ());
    geometry.setUserData(DrawOrder.RANK, rank);
    geometry.setQueueBucket(item.look().opacity() < 1 ? Bucket.Transparent : Bucket.Opaque);
    return geometry;
  }

  private Material material(SceneItem item) {
    Material material = new Material(assets, "org/midlateral/viewer/render/Piece.j3md");
    SceneItem.Look look = item.look();
    Color tint = look.tint();
    material.setColor(
        "Tint",
        new ColorRGBA(tint.getRed() / 255f, tint.getGreen() / 255f, tint.getBlue() / 255f, 1));
    material.setFloat("Opacity", (float) look.opacity());
    material.setFloat("Shade", look.lit() ? 1 : 0);
    material.setBoolean("VertexTint", look.colours() != null);
    material.setBoolean("Moving", item.displacements() != null);
    material.setFloat("Amount", (float) item.amount());
    return material;
  }

  /** Leaves only the nearest layer of a see-through shape to be drawn. */
  private Material depthOnly(SceneItem item) {
    Material material = material(item);
    material.getAdditionalRenderState().setColorWrite(false);
    behind(material.getAdditionalRenderState());
    return material;
  }

  private Material seeThrough(SceneItem item) {
    Material material = material(item);
    RenderState state = material.getAdditionalRenderState();
    state.setBlendMode(BlendMode.Alpha);
    state.setFaceCullMode(FaceCullMode.Back);
    state.setDepthWrite(false);
    state.setDepthFunc(RenderState.TestFunction.LessOrEqual);
    behind(state);
    return material;
  }

  /** Where a see-through surface lies in an opaque one, the opaque one is seen. */
  private static void behind(RenderState state) {
    state.setPolyOffset(1, 4);
  }

  private static Mesh mesh(MeshKey key) {
    Mesh mesh = new Mesh();
    SurfaceShape shape = key.shape();
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(shape.xyz));
    mesh.setBuffer(VertexBuffer.Type.Normal, 3, BufferUtils.createFloatBuffer(shape.normals));
    mesh.setBuffer(VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(shape.corners));
    if (key.colours() != null) {
      mesh.setBuffer(VertexBuffer.Type.Color, 4, BufferUtils.createFloatBuffer(key.colours().rgba));
    }
    if (key.displacements() != null) {
      mesh.setBuffer(
          VertexBuffer.Type.TexCoord, 3, BufferUtils.createFloatBuffer(key.displacements().xyz));
    }
    mesh.updateBound();
    mesh.setStatic();
    return mesh;
  }
}

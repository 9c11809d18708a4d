package org.midlateral.viewer.stage;

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

/** Turns actors into what the renderer draws; surfaces of the last picture are used again. */
final class GeometryBuilder {
  private final AssetManager assets;
  private Map<Costume, Mesh> meshes = new HashMap<>();

  /** What a mesh on the graphics card was made from; records of identities. */
  private record Costume(SurfaceShape shape, Actor.VertexPaint paint, Actor.Motion motion) {}

  GeometryBuilder(AssetManager assets) {
    this.assets = assets;
  }

  /** Geometries of all actors of a picture. */
  List<Geometry> dress(List<Actor> actors) {
    Map<Costume, Mesh> used = new HashMap<>();
    List<Geometry> dressed = new ArrayList<>();
    for (Actor actor : actors) {
      Costume costume = new Costume(actor.shape(), actor.look().paint(), actor.motion());
      Mesh known = meshes.get(costume);
      Mesh mesh = used.computeIfAbsent(costume, any -> known == null ? mesh(costume) : known);
      if (actor.look().opacity() < 1) {
        dressed.add(place(actor, mesh, depthOnly(actor), 2 * dressed.size()));
        dressed.add(place(actor, mesh, seeThrough(actor), 2 * dressed.size()));
      } else {
        dressed.add(place(actor, mesh, material(actor), 0));
      }
    }
    meshes = used;
    return dressed;
  }

  private static Geometry place(Actor actor, Mesh mesh, Material material, int rank) {
    Geometry geometry = new Geometry(actor.name(), mesh);
    geometry.setMaterial(material);
    geometry.setLocalTranslation(
        (float) actor.place().getX(), (float) actor.place().getY(), (float) actor.place().getZ());
    geometry.setUserData(InOrder.RANK, rank);
    geometry.setQueueBucket(actor.look().opacity() < 1 ? Bucket.Transparent : Bucket.Opaque);
    return geometry;
  }

  private Material material(Actor actor) {
    Material material = new Material(assets, "org/midlateral/viewer/stage/Piece.j3md");
    Actor.Look look = actor.look();
    Color tint = look.tint();
    material.setColor(
        "Tint",
        new ColorRGBA(tint.getRed() / 255f, tint.getGreen() / 255f, tint.getBlue() / 255f, 1));
    material.setFloat("Opacity", (float) look.opacity());
    material.setFloat("Shade", look.lit() ? 1 : 0);
    material.setBoolean("VertexTint", look.paint() != null);
    material.setBoolean("Moving", actor.motion() != null);
    material.setFloat("Amount", (float) actor.amount());
    return material;
  }

  /** Leaves only the nearest layer of a see-through shape to be drawn. */
  private Material depthOnly(Actor actor) {
    Material material = material(actor);
    material.getAdditionalRenderState().setColorWrite(false);
    behind(material.getAdditionalRenderState());
    return material;
  }

  private Material seeThrough(Actor actor) {
    Material material = material(actor);
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

  private static Mesh mesh(Costume costume) {
    Mesh mesh = new Mesh();
    SurfaceShape shape = costume.shape();
    mesh.setBuffer(VertexBuffer.Type.Position, 3, BufferUtils.createFloatBuffer(shape.xyz));
    mesh.setBuffer(VertexBuffer.Type.Normal, 3, BufferUtils.createFloatBuffer(shape.normals));
    mesh.setBuffer(VertexBuffer.Type.Index, 3, BufferUtils.createIntBuffer(shape.corners));
    if (costume.paint() != null) {
      mesh.setBuffer(
          VertexBuffer.Type.Color, 4, BufferUtils.createFloatBuffer(costume.paint().rgba));
    }
    if (costume.motion() != null) {
      mesh.setBuffer(
          VertexBuffer.Type.TexCoord, 3, BufferUtils.createFloatBuffer(costume.motion().xyz));
    }
    mesh.updateBound();
    mesh.setStatic();
    return mesh;
  }
}

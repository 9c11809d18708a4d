package org.midlateral.mechanics.finite;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Many small loads on one shell, each touching few nodes: unit forces at the points of a contact.
 * Loads on tied nodes are handed to those that lead them. Being filled; not for two threads.
 */
public final class LoadSet {
  private final ShellModel model;
  private final int count;

  /** Entries: the load, the freedom and the force or moment (N, N·mm). */
  private int[] loads = new int[1024];

  private int[] freedoms = new int[1024];
  private double[] values = new double[1024];
  private int used;

  /**
   * Loads of nothing yet.
   *
   * @param count number of loads
   */
  public LoadSet(ShellModel model, int count) {
    this.model = model;
    this.count = count;
  }

  /** Number of loads. */
  public int count() {
    return count;
  }

  /** The shell that they act on. */
  public ShellModel model() {
    return model;
  }

  /**
   * Adds a force to one of the loads. Its moment about the node is taken along.
   *
   * @param load which, from 0
   * @param node that takes it
   * @param at where it acts (mm)
   * @param force N
   */
  public void add(int load, int node, Vector3D at, Vector3D force) {
    addTo(load, node, force, model.node(node).vectorTo(at).cross(force));
  }

  private void addTo(int load, int node, Vector3D force, Vector3D moment) {
    Tie tie = model.tie(node);
    if (tie == null) {
      double[] push = force.toArray();
      double[] turn = moment.toArray();
      for (int k = 0; k < 3; k++) {
        put(load, DegreeOfFreedom.COUNT * node + k, push[k]);
        put(load, DegreeOfFreedom.COUNT * node + 3 + k, turn[k]);
      }
      return;
    }
    for (int l = 0; l < 3; l++) {
      Vector3D share = force.multiply(tie.weights()[l]);
      Vector3D turn = moment.multiply(tie.weights()[l]).add(tie.arms().get(l).cross(share));
      addTo(load, tie.leaders()[l], share, turn);
    }
  }

  private void put(int load, int freedom, double value) {
    if (value == 0) {
      return;
    }
    if (used == loads.length) {
      loads = Arrays.copyOf(loads, 2 * used);
      freedoms = Arrays.copyOf(freedoms, 2 * used);
      values = Arrays.copyOf(values, 2 * used);
    }
    loads[used] = load;
    freedoms[used] = freedom;
    values[used++] = value;
  }

  /**
   * The sum of all loads, each times a factor.
   *
   * @param factors one for each load
   */
  public ShellLoad sum(double[] factors) {
    ShellLoad sum = ShellLoad.none(model);
    for (int e = 0; e < used; e++) {
      sum.values()[freedoms[e]] += factors[loads[e]] * values[e];
    }
    return sum;
  }

  /** The entries sorted by freedom. */
  ByFreedom byFreedom() {
    return new ByFreedom(this);
  }

  /** Which loads touch a freedom, and how strongly. */
  static final class ByFreedom {
    private final int[] first;
    private final int[] load;
    private final double[] value;

    private ByFreedom(LoadSet set) {
      first = new int[DegreeOfFreedom.COUNT * set.model.nodeCount() + 1];
      for (int e = 0; e < set.used; e++) {
        first[set.freedoms[e] + 1]++;
      }
      for (int f = 1; f < first.length; f++) {
        first[f] += first[f - 1];
      }
      load = new int[set.used];
      value = new double[set.used];
      int[] next = first.clone();
      for (int e = 0; e < set.used; e++) {
        int at = next[set.freedoms[e]]++;
        load[at] = set.loads[e];
        value[at] = set.values[e];
      }
    }

    int from(int freedom) {
      return first[freedom];
    }

    int to(int freedom) {
      return first[freedom + 1];
    }

    int load(int entry) {
      return load[entry];
    }

    double value(int entry) {
      return value[entry];
    }
  }
}

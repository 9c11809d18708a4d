package org.midlateral.document;

import org.midlateral.solid.TriangleMesh;

/**
 * A solid with the name it goes by in files.
 *
 * @param name for example {@code trough}
 * @param mesh the closed surface (mm)
 */
public record Part(String name, TriangleMesh mesh) {}

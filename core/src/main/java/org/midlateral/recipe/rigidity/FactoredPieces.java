package org.midlateral.recipe.rigidity;

import java.util.Optional;
import org.midlateral.mechanics.held.FactoredShell;

/**
 * The pieces of an orthosis, each factored for itself.
 *
 * @param trough empty where it cannot be
 * @param dorsalShell empty where there is none, or where it cannot be
 */
record FactoredPieces(Optional<FactoredShell> trough, Optional<FactoredShell> dorsalShell) {}

package org.midlateral.mechanics.joint;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.midlateral.Fingers;
import org.midlateral.measurement.Measurements;
import org.midlateral.mechanics.element.Isotropic;

/**
 * What the assumption of independent columns of tissue costs: both fingers of {@link
 * ContactComparisonTest}, and a trough a hundred times as stiff, with columns and with one skin.
 * Some four minutes.
 *
 * <pre>
 * mvn -q -pl core -am test-compile -Pbench \
 *     -Dbench.class=org.midlateral.mechanics.joint.ContactTable
 * </pre>
 */
public final class ContactTable {
  private record Row(String name, Measurements measured, Isotropic plastic, double moment) {}

  private ContactTable() {}

  public static void main(String[] arguments) throws Exception {
    Isotropic soft = ContactComparisonTest.PCL;
    Isotropic stiff = new Isotropic(100 * soft.modulus(), soft.poisson());
    List<Row> rows =
        List.of(
            new Row("slim, PCL", Fingers.slim(), soft, 10),
            new Row("slim, a hundred times as stiff", Fingers.slim(), stiff, 10),
            new Row("ring, PA12", Fingers.ring(), WornFingers.PA12, 20));
    Path folder = Files.createTempDirectory("contact");
    for (Row row : rows) {
      HeldFinger finger = InSolids.finger(row.measured, row.plastic);
      for (boolean columns : new boolean[] {true, false}) {
        InSolids solids = InSolids.of(finger, row.moment, columns, folder);
        String tissue = columns ? ", columns: " : ", one skin: ";
        System.out.println(row.name + tissue + solids.line(solids.found(finger)));
      }
    }
  }
}

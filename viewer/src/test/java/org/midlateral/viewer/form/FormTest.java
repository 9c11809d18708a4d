package org.midlateral.viewer.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.midlateral.viewer.draft.Draft;

class FormTest {
  @Test
  void keysOfTheOtherWayOfMakingAreOutOfSight() {
    Form form = new Form((path, text) -> {}, change -> {}, () -> {});
    for (String making : new String[] {"hand", "print", "auto", "hand"}) {
      form.show(new Draft(Map.of("making", making)));
      boolean printed = !making.equals("hand");
      assertThat(isSeen(form, "making")).isTrue();
      assertThat(isSeen(form, "circumference.pip")).isTrue();
      assertThat(isSeen(form, "group.material")).isTrue();
      assertThat(isSeen(form, "group.print")).as(making).isEqualTo(printed);
      assertThat(find(form, "dorsal-shell.fit-gap").orElseThrow().getParent().isVisible())
          .as(making)
          .isEqualTo(printed);
    }
  }

  private static boolean isSeen(Form form, String name) {
    for (Component at = find(form, name).orElseThrow(); at != form; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Component> find(Container in, String name) {
    for (Component child : in.getComponents()) {
      if (name.equals(child.getName())) {
        return Optional.of(child);
      }
      if (child instanceof Container inner) {
        Optional<Component> found = find(inner, name);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}

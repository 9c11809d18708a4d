package org.midlateral.viewer.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.Test;
import org.midlateral.measurement.InputError;
import org.midlateral.viewer.draft.Draft;

class FormTest {
  @Test
  void keysOfTheOtherWayOfMakingAreOutOfSight() {
    Form form = form((path, text) -> {}, path -> {});
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

  private static Form form(BiConsumer<String, String> onEdit, Consumer<String> onTakeOut) {
    return new Form(onEdit, change -> {}, onTakeOut, path -> {});
  }

  private static <C> C at(Form form, String name, Class<C> type) {
    return type.cast(find(form, name).orElseThrow());
  }

  @Test
  void aNewFingerHasNothingInItAndWhatMustBeKnownStandsOpen() {
    Form form = form((path, text) -> {}, path -> {});
    Draft fresh = Draft.fresh("hand");
    form.show(fresh);
    assertThat(fresh.missing()).hasSize(11);
    for (String path : fresh.missing()) {
      assertThat(isSeen(form, path)).as(path).isTrue();
      Component field = find(form, path).orElseThrow();
      if (field instanceof JTextField text) {
        assertThat(text.getText()).as(path).isEmpty();
      } else {
        assertThat(((JComboBox<?>) field).getSelectedItem()).as(path).isNull();
      }
    }
    assertThat(isSeen(form, "trough.wall")).isFalse();
  }

  @Test
  void aFoldedGroupTellsHowManyOfItsValuesAreNoDefaults() {
    Form form = form((path, text) -> {}, path -> {});
    form.show(new Draft(Map.of("trough.wall", "2.2", "trough.liner", "0", "trough.wrap", "0.4")));
    assertThat(at(form, "group.trough", JToggleButton.class).getText()).endsWith("2 set");
    assertThat(at(form, "group.relief", JToggleButton.class).getText()).isEqualTo("Relief");
  }

  @Test
  void whatIsSaidMovesNoRow() {
    Form form = form((path, text) -> {}, path -> {});
    form.show(Draft.fresh("print"));
    int before =
        find(form, "length.dip-to-tip").orElseThrow().getParent().getPreferredSize().height;
    InputError error = new InputError("", 0, "length.dip-to-tip", "9", "", "9 mm is out of range");
    form.showMessages(List.of(error), List.of(), Color.ORANGE, Color.RED);
    JTextField field = at(form, "length.dip-to-tip", JTextField.class);
    assertThat(field.getParent().getPreferredSize().height).isEqualTo(before);
    assertThat(field.getClientProperty("JComponent.outline")).isEqualTo("error");
    assertThat(field.getToolTipText()).isEqualTo("9 mm is out of range");
  }

  @Test
  void aStepByKeyIsToldOnceAndNeverAsNothing() {
    List<String> told = new ArrayList<>();
    Form form = form((path, text) -> told.add(path + "=" + text), path -> {});
    form.show(new Draft(Map.of("circumference.pip", "70")));
    JTextField field = at(form, "circumference.pip", JTextField.class);
    field.getActionMap().get("UP").actionPerformed(new ActionEvent(field, 0, ""));
    assertThat(told).containsExactly("circumference.pip=71");
  }

  @Test
  void aCommaIsReadAsTheLocaleTypesIt() {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale : new Locale[] {Locale.GERMANY, Locale.US}) {
        Locale.setDefault(locale);
        List<String> told = new ArrayList<>();
        Form form = form((path, text) -> told.add(path + "=" + text), path -> {});
        at(form, "trough.wall", JTextField.class).setText("1,8");
        at(form, "note", JTextField.class).setText("1,8");
        String read = locale.equals(Locale.GERMANY) ? "1.8" : "1,8";
        assertThat(told).containsExactly("trough.wall=" + read, "note=1,8");
        form.show(new Draft(Map.of("trough.wall", read)));
        assertThat(at(form, "trough.wall", JTextField.class).getText()).isEqualTo("1,8");
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aKeyThatIsNotKnownIsTakenOutWithAClick() {
    List<String> out = new ArrayList<>();
    Form form = form((path, text) -> {}, out::add);
    form.show(new Draft(Map.of("trough.wal", "2")));
    at(form, "unknown.trough.wal", JButton.class).doClick();
    assertThat(out).containsExactly("trough.wal");
    form.show(new Draft(Map.of("trough.wal", "2")).without("trough.wal"));
    assertThat(find(form, "unknown.trough.wal")).isEmpty();
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

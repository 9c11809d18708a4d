package org.midlateral.viewer.form;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import java.util.function.ObjIntConsumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSeparator;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import javax.swing.UIManager;
import org.midlateral.measurement.Digit;
import org.midlateral.measurement.Finding;
import org.midlateral.measurement.Finding.Severity;
import org.midlateral.measurement.InputError;
import org.midlateral.measurement.LengthUnit;
import org.midlateral.measurement.key.InputKey;
import org.midlateral.measurement.key.KeyTable;
import org.midlateral.measurement.key.ValueKind;
import org.midlateral.viewer.draft.Draft;

/** The form of all keys. */
public final class Form extends JPanel {
  private static final long serialVersionUID = 1;
  private static final Set<String> OPEN_AT_FIRST = Set.of("", "circumference", "length");
  private static final Set<String> FIRST = Set.of("making", "unit");
  private static final int LINE = 30;
  private static final int HINT_LINES = 5;

  private final transient BiConsumer<String, String> onEdit;
  private final transient Consumer<String> onLeave;
  private final Map<String, Group> groups = new LinkedHashMap<>();
  private final transient Map<String, Row> rows = new LinkedHashMap<>();
  private final JTextArea hint = new JTextArea(HINT_LINES, 20);
  private final BubbleRows bubbles;
  private final JScrollPane scroll;
  private final UnknownRows unknown;
  private LengthUnit unit = LengthUnit.MM;
  private transient Optional<Digit> digit = Optional.empty();
  private transient Row focused;
  private transient ShownMessages messages = ShownMessages.NONE;

  /**
   * A form.
   *
   * @param onEdit gets the path and the new text of each edit
   * @param onListChange gets what to do with a list's items
   * @param onTakeOut gets the path of a key that is not known and to be taken out
   * @param onLeave gets the path of a field that is left
   */
  public Form(
      BiConsumer<String, String> onEdit,
      Consumer<ListChange> onListChange,
      Consumer<String> onTakeOut,
      Consumer<String> onLeave) {
    super(new BorderLayout());
    this.onEdit = onEdit;
    this.onLeave = onLeave;
    unknown = new UnknownRows(onTakeOut);
    JPanel column = new Column();
    column.add(unknown);
    for (InputKey key : KeyTable.standard().keys()) {
      if (!key.isOfItem() && key.kind() != ValueKind.LIST) {
        group(sectionOf(key), column).add(addRow(key, key.path()));
      }
    }
    bubbles = new BubbleRows(groups.get("relief"), this::addRow, rows::remove, onListChange);
    scroll =
        new JScrollPane(
            column,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(LINE);
    add(scroll, BorderLayout.CENTER);
    add(hintCard(), BorderLayout.SOUTH);
  }

  private JPanel hintCard() {
    hint.setEditable(false);
    hint.setFocusable(false);
    hint.setLineWrap(true);
    hint.setWrapStyleWord(true);
    hint.setOpaque(false);

    hint.setName("hint");
    JPanel card = new JPanel(new BorderLayout());
    card.add(new JSeparator(), BorderLayout.NORTH);
    hint.setBorder(BorderFactory.createEmptyBorder(6, 12, 6, 12));
    card.add(hint);
    focused(null);
    return card;
  }

  private Group group(String section, JPanel column) {
    Group group = groups.get(section);
    if (group == null) {
      group = new Group(section, OPEN_AT_FIRST.contains(section));
      groups.put(section, group);
      column.add(group);
    }
    return group;
  }

  private Row addRow(InputKey key, String path) {
    Row row = new Row(key, path, onEdit, this::focused);
    rows.put(path, row);
    messages = ShownMessages.NONE;
    return row;
  }

  private void focused(Row row) {
    if (row == null && focused != null) {
      onLeave.accept(focused.path());
    }
    focused = row;
    hint();
  }

  /** What is to be said of the field that has the keys, or else what it takes. */
  private void hint() {
    String said = focused == null ? "" : focused.text();
    hint.setForeground(
        said.isEmpty()
            ? UIManager.getColor("Label.foreground")
            : focused.colour(messages.caution(), messages.refusal()));
    if (!said.isEmpty()) {
      hint.setText(said);
    } else if (focused == null) {
      hint.setText(
          "Type a length as 62, 6.2 cm or 2 1/2 in. Up and Down step a number; Tab goes on.");
    } else {
      hint.setText(Wording.hint(focused.key().of(digit), unit));
    }
  }

  /** Shows a draft; no edit is told. */
  public void show(Draft draft) {
    unit = draft.unit();
    unknown.show(draft);
    bubbles.show(draft);
    digit = Digit.of(draft.get("digit"));
    rows.forEach((path, row) -> row.show(draft.get(path), unit, digit));
    showKeysFor(draft.get("making"));
    count(
        (path, row) -> {
          String text = draft.get(path);
          return !text.isEmpty()
              && !text.equals(row.key().standard().orElse(null))
              && !text.equals(Wording.shownDefault(row.key(), unit));
        },
        Group::setSet);
    hint();
  }

  /** Tells each group how many of its rows are such. */
  private void count(BiPredicate<String, Row> such, ObjIntConsumer<Group> teller) {
    Map<String, Integer> counts = new HashMap<>();
    rows.forEach(
        (path, row) -> {
          if (such.test(path, row)) {
            counts.merge(sectionOf(row), 1, Integer::sum);
          }
        });
    groups.forEach((section, group) -> teller.accept(group, counts.getOrDefault(section, 0)));
  }

  /** What the value at a path is called on the screen; the path itself where no key has it. */
  public static String words(String path) {
    return Draft.key(path).map(Wording::whole).orElse(path);
  }

  /** Shows the form from its beginning. */
  public void toTop() {
    scroll.getVerticalScrollBar().setValue(0);
  }

  /** Only what must be filled in stands open. */
  public void foldTheRest() {
    groups.forEach((section, group) -> group.setOpen(OPEN_AT_FIRST.contains(section)));
  }

  /** Leaves out the keys that are of no use for a way of making; all are shown where it is open. */
  private void showKeysFor(String making) {
    boolean chosen = making.equals("hand") || making.equals("print");
    Set<String> sections = new HashSet<>();
    for (Row row : rows.values()) {
      row.setVisible(!chosen || row.key().isFor(making));
      if (row.isVisible()) {
        sections.add(sectionOf(row));
      }
    }
    groups.forEach((section, group) -> group.setVisible(sections.contains(section)));
  }

  private static String sectionOf(Row row) {
    return sectionOf(row.key());
  }

  /** The group that a key stands in: what may be left out stands apart from what must be known. */
  private static String sectionOf(InputKey key) {
    if (key.isOfItem()) {
      return "relief";
    }
    boolean first = key.required() || FIRST.contains(key.path());
    return key.section().isEmpty() && !first ? Group.SHEET : key.section();
  }

  /** The messages at the rows, and their colours. */
  private record ShownMessages(
      Map<String, List<Row.Message>> byPath, Color caution, Color refusal) {
    static final ShownMessages NONE = new ShownMessages(Map.of(), null, null);
  }

  /** Shows at each field what was found about it. */
  public void showMessages(
      List<InputError> errors, List<Finding> findings, Color caution, Color refusal) {
    Map<String, List<Row.Message>> byPath = new LinkedHashMap<>();
    for (InputError error : errors) {
      byPath
          .computeIfAbsent(error.key(), any -> new ArrayList<>())
          .add(new Row.Message(Severity.REFUSAL, error.text()));
    }
    for (Finding finding : findings) {
      if (finding.key() != null && finding.severity() != Severity.NOTE) {
        byPath
            .computeIfAbsent(finding.key(), any -> new ArrayList<>())
            .add(new Row.Message(finding.severity(), finding.text()));
      }
    }
    ShownMessages all = new ShownMessages(byPath, caution, refusal);
    if (all.equals(messages)) {
      return;
    }
    messages = all;
    rows.forEach(
        (path, row) -> row.showMessages(byPath.getOrDefault(path, List.of()), caution, refusal));
    count((path, row) -> byPath.containsKey(path), Group::setCount);
    hint();
  }

  /** Opens the section of a key and goes to its field. */
  public void goTo(String path) {
    Row row = rows.get(path);
    if (row == null) {
      return;
    }
    Group group = groups.get(sectionOf(row));
    group.setOpen(true);
    validate();
    row.scrollRectToVisible(new Rectangle(row.getSize()));
    row.field().requestFocusInWindow();
  }

  /** The column of groups, as wide as what it scrolls in. */
  private static final class Column extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1;

    Column() {
      setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
      setBorder(BorderFactory.createEmptyBorder(4, 8, 12, 4));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
      return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
      return LINE;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
      return seen.height - LINE;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
      return false;
    }
  }
}

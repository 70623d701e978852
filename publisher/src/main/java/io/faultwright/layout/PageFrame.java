package io.faultwright.layout;

import io.faultwright.flow.Imprint;
import io.faultwright.flow.Node;
import io.faultwright.flow.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Draws the frame of a page with its head and foot, and says what room is left. */
final class PageFrame {
  private static final double MARGIN = 28;
  private static final double PADDING = 8;
  private static final double GAP = 11;
  private static final double TITLE = 13;
  private static final double SIZE = 9;
  private static final double FOOT = Typography.SMALLEST;
  private static final int MOST_TITLE_LINES = 2;
  private static final int MOST_FOOT_LINES = 3;
  private static final int MOST_SCOPE_LINES = 2;
  private static final int MOST_WHOLE_LINES = 30;
  private static final int MOST_ADDRESS_LINES = 4;

  /** Between the frame and the quiet zone of the code, so that the frame stays out of it. */
  private static final double EDGE = 1;

  private static final Wrap SCOPE = new Wrap(SIZE, false);

  private final Imprint imprint;
  private final Node.Start start;
  private final Optional<String> address;
  private final Optional<QrSymbol> code;
  private final int width;
  private final int height;
  private final Box frame;
  private final Figure cautions;
  private final Box room;

  /** The frame on a sheet of a size, with the cautions of its parts. */
  PageFrame(
      Imprint imprint,
      Node.Start start,
      Optional<OnlinePage> online,
      List<Warning> warnings,
      int width,
      int height) {
    this.imprint = imprint;
    this.start = start;
    this.address = online.map(OnlinePage::address);
    this.width = width;
    this.height = height;
    this.frame = new Box(MARGIN, MARGIN, width - 2 * MARGIN, height - 2 * MARGIN);
    this.code = online.flatMap(OnlinePage::code).map(this::placed);
    this.cautions =
        CautionPanel.of(warnings, frame.width() - 2 * PADDING, imprint.say())
            .shifted(frame.x() + PADDING, frame.y() + headHeight() + PADDING);
    this.room = measured();
  }

  /** Width of the sheet. */
  int width() {
    return width;
  }

  /** Height of the sheet. */
  int height() {
    return height;
  }

  /** Where the chart may stand. */
  Box room() {
    return room;
  }

  /** The code of the online page, in the upper right corner. */
  Optional<QrSymbol> code() {
    return code;
  }

  private QrSymbol placed(QrSymbol symbol) {
    return symbol.shifted(frame.right() - EDGE - symbol.box().width(), frame.y() + EDGE);
  }

  private Box measured() {
    double top = frame.y() + headHeight() + cautionsHeight() + GAP;
    double bottom = frame.bottom() - footHeight() - GAP;
    return new Box(frame.x() + GAP, top, frame.width() - 2 * GAP, bottom - top);
  }

  List<Shape> shapes() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape(Shape.Kind.FRAME, frame));
    shapes.add(rule(frame.y() + headHeight()));
    shapes.add(rule(frame.bottom() - footHeight()));
    if (cautionsHeight() > 0) {
      shapes.add(rule(frame.y() + headHeight() + cautionsHeight()));
    }
    shapes.addAll(cautions.shapes());
    return shapes;
  }

  private double cautionsHeight() {
    return cautions.height() == 0 ? 0 : cautions.height() + 2 * PADDING - 3;
  }

  private Shape rule(double y) {
    return new Shape(Shape.Kind.RULE, new Box(frame.x(), y, frame.width(), 0));
  }

  List<Text> texts(int number, int count) {
    return Stream.of(subject(), source(number, count), cautions.texts(), foot())
        .flatMap(List::stream)
        .toList();
  }

  private List<Text> subject() {
    Paragraph column = new Paragraph(frame.x() + PADDING, frame.y() + PADDING - 2);
    column.add(title(), 0, TITLE, true, TITLE + 3);
    column.add(scope(), 0, SIZE, false, SIZE + 2);
    return column.texts();
  }

  private List<String> title() {
    return new Wrap(TITLE, true).lines(start.title(), subjectWidth(), MOST_TITLE_LINES);
  }

  private List<String> scope() {
    return new ScopeText(start.scope(), imprint.say())
        .lines(SCOPE, subjectWidth(), MOST_SCOPE_LINES);
  }

  /** The scope where the head shortens it. */
  private List<String> wholeScope() {
    return new ScopeText(start.scope(), imprint.say()).fits(SCOPE, subjectWidth(), MOST_SCOPE_LINES)
        ? List.of()
        : new Wrap(FOOT, false)
            .lines(imprint.say().say("For: {0}", start.scope()), footWidth(), MOST_WHOLE_LINES);
  }

  private List<Text> source(int number, int count) {
    String edition = imprint.say().say("Revision {0}, {1}", imprint.revision(), imprint.date());
    String page = imprint.say().say("Page {0} of {1}", number, count);
    List<String> lines = new ArrayList<>();
    lines.add(imprint.handbook());
    lines.add(imprint.maker().isEmpty() ? edition : imprint.maker() + ", " + edition);
    lines.add(imprint.draft() ? imprint.say().say("DRAFT, {0}", page) : page);
    List<Text> texts = new ArrayList<>();
    double baseline = frame.y() + PADDING + SIZE - 1;
    for (int i = 0; i < lines.size(); i++) {
      boolean bold = i == lines.size() - 1;
      String line = new Wrap(SIZE, bold).lines(lines.get(i), sourceWidth(), 1).get(0);
      texts.add(source(line, baseline + i * (SIZE + 2), SIZE, bold));
    }
    for (String line : printedAddress()) {
      double next = texts.get(texts.size() - 1).baseline() + FOOT + 1.5;
      texts.add(source(line, next, FOOT, false));
    }
    return texts;
  }

  private Text source(String line, double baseline, double size, boolean bold) {
    double x = code.map(symbol -> symbol.box().x()).orElse(frame.right() - PADDING);
    return new Text(line, x, baseline, size, bold, Text.Anchor.END);
  }

  /** The address without what a browser adds by itself. */
  private List<String> printedAddress() {
    String shown = address.orElse("").replaceFirst("^https?://", "");
    return new Wrap(FOOT, false).lines(shown, sourceWidth(), MOST_ADDRESS_LINES);
  }

  private List<Text> foot() {
    Paragraph column = new Paragraph(frame.x() + PADDING, frame.bottom() - footHeight() + 4);
    column.add(wholeScope(), 0, FOOT, false, FOOT + 1.5);
    column.add(disclaimer(), 0, FOOT, false, FOOT + 1.5);
    return column.texts();
  }

  private List<String> disclaimer() {
    String unlisted =
        imprint
            .say()
            .say("If an answer is not on the chart, it cannot be right: take the reading again.");
    return new Wrap(FOOT, false)
        .lines(unlisted + " " + imprint.disclaimer(), footWidth(), MOST_FOOT_LINES);
  }

  private double footWidth() {
    return frame.width() - 2 * PADDING;
  }

  private double headHeight() {
    double subject = title().size() * (TITLE + 3) + scope().size() * (SIZE + 2);
    double source = 3 * (SIZE + 2) + printedAddress().size() * (FOOT + 1.5);
    double symbol = code.map(drawn -> drawn.box().height() + 2 * EDGE).orElse(0.0);
    return Math.max(Math.max(subject, source) + 2 * PADDING - 4, symbol);
  }

  private double footHeight() {
    return (wholeScope().size() + disclaimer().size()) * (FOOT + 1.5) + 8;
  }

  private double subjectWidth() {
    double symbol = code.map(drawn -> drawn.box().width() - PADDING + EDGE).orElse(0.0);
    return frame.width() - 3 * PADDING - sourceWidth() - symbol;
  }

  private double sourceWidth() {
    return Math.floor(frame.width() * 0.36);
  }
}

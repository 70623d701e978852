package io.faultwright.layout;

import io.faultwright.flow.Card;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.Warning;
import io.faultwright.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Sets a pocket card on a quarter of a sheet: A6 for A4. What does not fit is left to the chart,
 * and the card names it.
 */
public final class CardLayout {
  private static final double MARGIN = 12;
  private static final double PADDING = 6;
  private static final double TITLE = 11;
  private static final double SIZE = Typography.SMALLEST - 0.5;
  private static final double LEADING = 10;
  private static final double INDENT = 8;

  /** Further in for each level of the outline, down to the deepest that is told apart. */
  private static final double STEP = 6;

  private static final int DEEPEST = 8;

  /** Between readings and the outcome beside them. */
  private static final double GAP = 6;

  private static final int ANY = 100;
  private static final int MOST_TITLE_LINES = 3;

  private final Imprint imprint;
  private final Paper paper;

  /** Cards of a handbook, four to a sheet of that size. */
  public CardLayout(Imprint imprint, Paper paper) {
    this.imprint = imprint;
    this.paper = paper;
  }

  /** The card. */
  public ChartPage card(Card card) {
    for (int shown = card.entries().size(); shown > 0; shown--) {
      // A condition under which nothing stands would read as if it showed nothing.
      boolean dangling = card.entries().get(shown - 1).outcome().isEmpty();
      Optional<ChartPage> page = dangling ? Optional.empty() : page(card, shown);
      if (page.isPresent()) {
        return page.get();
      }
    }
    return page(bare(card, card.warnings(), card.entries()), 0)
        .or(
            () ->
                page(
                    bare(
                        card,
                        List.of(),
                        List.of(new Card.Entry(0, "", imprint.say().say("Everything")))),
                    0))
        .orElseThrow();
  }

  /** A card with hardly anything on it, for texts that no card can hold. */
  private static Card bare(Card card, List<Warning> warnings, List<Card.Entry> entries) {
    return new Card(card.title(), "", warnings, List.of(), List.of(), entries);
  }

  /** Four of a card on one sheet, with marks where it is cut. */
  public ChartPage fourUp(ChartPage card) {
    List<Shape> shapes = new ArrayList<>();
    List<Text> texts = new ArrayList<>();
    for (int quarter = 0; quarter < 4; quarter++) {
      double dx = quarter % 2 * paper.width() / 2.0;
      double dy = quarter / 2 * paper.height() / 2.0;
      card.frame().forEach(shape -> shapes.add(shape.shifted(dx, dy)));
      card.texts().forEach(text -> texts.add(text.shifted(dx, dy)));
    }
    shapes.addAll(cutMarks());
    return sheet(paper.width(), paper.height(), card.title(), shapes, texts);
  }

  private List<Shape> cutMarks() {
    double middle = paper.width() / 2.0;
    double waist = paper.height() / 2.0;
    return Stream.of(
            new Box(middle, 0, 0, MARGIN),
            new Box(middle, paper.height() - MARGIN, 0, MARGIN),
            new Box(0, waist, MARGIN, 0),
            new Box(paper.width() - MARGIN, waist, MARGIN, 0),
            new Box(middle, waist - MARGIN / 2, 0, MARGIN),
            new Box(middle - MARGIN / 2, waist, MARGIN, 0))
        .map(box -> new Shape(Shape.Kind.RULE, box))
        .toList();
  }

  private static ChartPage sheet(
      int width, int height, String title, List<Shape> shapes, List<Text> texts) {
    return new ChartPage(
        width, height, 1, 1, title, shapes, texts, Optional.empty(), List.of(), List.of());
  }

  /** The card with so many entries, if they fit. */
  private Optional<ChartPage> page(Card card, int shown) {
    Box frame =
        new Box(MARGIN, MARGIN, paper.width() / 2 - 2 * MARGIN, paper.height() / 2 - 2 * MARGIN);
    double width = frame.width() - 2 * PADDING;
    Paragraph column = new Paragraph(frame.x() + PADDING, frame.y() + PADDING - 2);
    head(column, card, width);
    body(column, card, shown, width);
    List<String> foot = new Wrap(SIZE, false).lines(foot(), width, ANY);
    double top = frame.bottom() - foot.size() * LEADING - PADDING;
    if (column.bottom() + PADDING / 2 > top) {
      return Optional.empty();
    }
    Paragraph end = new Paragraph(frame.x() + PADDING, top + 3);
    end.add(foot, 0, SIZE, false, LEADING);
    List<Shape> shapes = new ArrayList<>(column.shapes());
    shapes.add(new Shape(Shape.Kind.FRAME, frame));
    shapes.add(new Shape(Shape.Kind.RULE, new Box(frame.x(), top, frame.width(), 0)));
    List<Text> texts = Stream.concat(column.texts().stream(), end.texts().stream()).toList();
    return Optional.of(sheet(paper.width() / 2, paper.height() / 2, card.title(), shapes, texts));
  }

  private void head(Paragraph column, Card card, double width) {
    List<String> title = new Wrap(TITLE, true).lines(card.title(), width, MOST_TITLE_LINES);
    column.add(title, 0, TITLE, true, TITLE + 2);
    Wrap plain = new Wrap(SIZE, false);
    column.add(plain.lines(card.scope(), width, ANY), 0, SIZE, false, LEADING);
    column.skip(2);
    CautionText cautions = new CautionText(SIZE, LEADING, imprint.say());
    card.warnings().stream()
        .sorted(CautionPanel.GRAVEST)
        .forEach(warning -> cautions.add(column, warning, warning.hazard(), width));
  }

  private void body(Paragraph column, Card card, int shown, double width) {
    Wrap plain = new Wrap(SIZE, false);
    if (!card.limits().isEmpty()) {
      bold(column, imprint.say().say("Limits"), width);
      card.limits().forEach(line -> hanging(column, plain, line, width));
    }
    if (!card.first().isEmpty()) {
      bold(column, imprint.say().say("First"), width);
      card.first().forEach(line -> hanging(column, plain, line, width));
    }
    column.skip(2);
    card.entries().subList(0, shown).forEach(entry -> entry(column, entry, width));
    List<String> rest =
        card.entries().subList(shown, card.entries().size()).stream()
            .map(Card.Entry::outcome)
            .filter(outcome -> !outcome.isEmpty())
            .distinct()
            .toList();
    if (!rest.isEmpty()) {
      column.skip(2);
      bold(column, imprint.say().say("For these see the chart"), width);
      column.add(plain.lines(String.join("; ", rest), width, ANY), 0, SIZE, false, LEADING);
    }
  }

  /** Readings, and the outcome on the same line where it has room. */
  private static void entry(Paragraph column, Card.Entry entry, double width) {
    double indent = Math.min(entry.depth(), DEEPEST) * STEP;
    Wrap plain = new Wrap(SIZE, false);
    List<String> lines = plain.lines(entry.conditions(), width - indent - INDENT, ANY);
    column.mark("–", indent, SIZE, false, LEADING);
    double start = indent + INDENT;
    if (entry.outcome().isEmpty()) {
      column.add(lines, start, SIZE, false, LEADING);
      return;
    }
    int last = Math.max(0, lines.size() - 1);
    double end = start + (lines.isEmpty() ? 0 : plain.width(lines.get(last)) + GAP);
    boolean beside = end + Typography.width(entry.outcome(), SIZE, true) <= width;
    if (beside) {
      column.add(lines.subList(0, last), start, SIZE, false, LEADING);
      lines
          .subList(last, lines.size())
          .forEach(line -> column.mark(line, start, SIZE, false, LEADING));
      column.add(List.of(entry.outcome()), end, SIZE, true, LEADING);
    } else {
      column.add(lines, start, SIZE, false, LEADING);
      List<String> outcome = new Wrap(SIZE, true).lines(entry.outcome(), width - start, ANY);
      column.add(outcome, start, SIZE, true, LEADING);
    }
  }

  private static void bold(Paragraph column, String text, double width) {
    column.add(new Wrap(SIZE, true).lines(text, width, ANY), 0, SIZE, true, LEADING);
  }

  private static void hanging(Paragraph column, Wrap plain, String text, double width) {
    List<String> lines = plain.lines(text, width - INDENT, ANY);
    column.mark("–", 0, SIZE, false, LEADING);
    column.add(lines, INDENT, SIZE, false, LEADING);
  }

  private String foot() {
    Words say = imprint.say();
    String edition =
        say.say("{0}, revision {1}, {2}", imprint.handbook(), imprint.revision(), imprint.date());
    return (imprint.draft() ? say.say("DRAFT") + ". " : "")
        + edition
        + ". "
        + say.say("Steps and cautions in full: on the chart and in the handbook.")
        + " "
        + imprint.disclaimer();
  }
}

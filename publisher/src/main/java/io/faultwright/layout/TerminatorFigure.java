package io.faultwright.layout;

import io.faultwright.flow.Node;
import java.util.List;

/** Draws a start or an outcome: text in a terminator. */
final class TerminatorFigure {
  private static final int MOST_TITLE_LINES = 6;
  private static final int MOST_ADVICE_LINES = 6;

  /** The advice may be this much wider than the title before it is broken. */
  private static final double ADVICE = 1.3;

  private final Typography type;

  TerminatorFigure(Typography type) {
    this.type = type;
  }

  Figure of(Node.Start start) {
    double width = type.outcomeWidth() * 1.8;
    String scope =
        new ScopeText(start.scope(), type.say())
            .shown(new Wrap(type.small(), false), width * ADVICE, MOST_ADVICE_LINES);
    return terminator(Shape.Kind.START, start.title(), scope, width);
  }

  Figure of(Node.Outcome outcome) {
    Shape.Kind kind =
        switch (outcome.ending()) {
          case FAULT -> Shape.Kind.FAULT;
          case REFERRAL -> Shape.Kind.REFERRAL;
          case ESCALATION -> Shape.Kind.ESCALATION;
        };
    return terminator(kind, outcome.title(), outcome.advice(), type.outcomeWidth());
  }

  private Figure terminator(Shape.Kind kind, String title, String advice, double widest) {
    Wrap bold = new Wrap(type.size(), true);
    Wrap plain = new Wrap(type.small(), false);
    List<String> titles = bold.balanced(title, widest, MOST_TITLE_LINES);
    List<String> advices = plain.balanced(advice, widest * ADVICE, MOST_ADVICE_LINES);
    double text = titles.size() * type.leading() + advices.size() * type.smallLeading();
    double height = Grid.even(text + type.padding() * 1.6);
    double inset = inset(height, text) + type.padding() * 0.5;
    double widestLine = Math.max(bold.widest(titles), plain.widest(advices));
    double width = Grid.even(Math.max(widestLine + 2 * inset, height * 1.5));
    Paragraph column = new Paragraph(0, Grid.half((height - text) / 2));
    column.addCentred(titles, width / 2, type.size(), true, type.leading());
    column.addCentred(advices, width / 2, type.small(), false, type.smallLeading());
    Shape outline = new Shape(kind, new Box(0, 0, width, height));
    return new Figure(width, height, List.of(outline), column.texts());
  }

  /** How far the round ends reach into the corners of the text. */
  private static double inset(double height, double text) {
    double radius = height / 2;
    return radius - Math.sqrt(radius * radius - text * text / 4);
  }
}

package io.faultwright.report;

import io.faultwright.grading.Band;
import io.faultwright.grading.Choice;
import io.faultwright.grading.Flag;
import io.faultwright.grading.ItemReport;
import io.faultwright.grading.QuizReport;
import io.faultwright.grading.Reliability;
import io.faultwright.handin.IssuedQuiz;
import io.faultwright.handin.IssuedQuiz.Item;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** How good a quiz and its items are, to read. */
final class ItemsText {
  /** Fewer participants tell little of an item; common practice, no source. */
  private static final int FEW = 30;

  private final IssuedQuiz quiz;
  private final QuizReport report;
  private final UnaryOperator<String> address;

  ItemsText(IssuedQuiz quiz, QuizReport report, UnaryOperator<String> address) {
    this.quiz = quiz;
    this.report = report;
    this.address = address;
  }

  String write() {
    return "The quiz as a whole\n"
        + whole()
        + "\nThe items\n"
        + items()
        + LEGEND
        + "\nWhat was chosen\n"
        + choices();
  }

  private static final String LEGEND =
      "\n  right: share who got it right. rest: correlation with the right answers to the other"
          + " items (corrected point-biserial).\n  best-weak: share of the best 27 % who got it right"
          + " less that of the weakest 27 %; from 0.40 very good, from 0.30 good,\n  from 0.20"
          + " marginal, below poor (Ebel).\n";

  private String whole() {
    String few =
        report.participants() < FEW
            ? "  Fewer than " + FEW + " participants: figures of single items may be chance.\n"
            : "";
    return "  mean "
        + Figures.two(report.mean())
        + " of "
        + report.items().size()
        + " items, standard deviation "
        + Figures.two(report.deviation())
        + "\n"
        + report.reliability().map(ItemsText::reliability).orElse("  KR-20: cannot be told\n")
        + few;
  }

  private static String reliability(Reliability reliability) {
    return "  KR-20 "
        + Figures.two(reliability.kr20())
        + " (KR-21 "
        + Figures.two(reliability.kr21())
        + "), standard error of a score "
        + Figures.two(reliability.standardError())
        + " items\n";
  }

  private String items() {
    AlignedRows rows = new AlignedRows();
    rows.add(List.of("item", "right", "rest", "best-weak", "", "left out", "flags"));
    for (int i = 0; i < report.items().size(); i++) {
      ItemReport item = report.items().get(i);
      rows.add(
          List.of(
              (i + 1) + "  " + item.item(),
              Figures.percent(item.difficulty()) + " %",
              Figures.two(item.corrected()),
              Figures.two(item.discrimination()),
              word(item.band()),
              Integer.toString(item.omitted()),
              item.flags().isEmpty() ? "-" : "!"));
    }
    return rows.text() + flagged();
  }

  private static String word(Band band) {
    return band.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private String flagged() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < report.items().size(); i++) {
      ItemReport item = report.items().get(i);
      String page = address.apply(quiz.items().get(i).page());
      for (Flag flag : item.flags()) {
        text.append("  ! ")
            .append(Columns.printable((i + 1) + "  " + item.item() + ": " + words(flag)))
            .append("\n    ")
            .append(Columns.printable(page))
            .append("\n");
      }
    }
    return text.isEmpty() ? "" : "\n" + text;
  }

  private static String words(Flag flag) {
    return switch (flag) {
      case AGAINST_THE_REST -> "those who got the rest right tended to get this wrong";
      case WRONG_OPTION_OF_THE_BEST ->
          "of the best, more chose one wrong option than the right one";
      case EVERYBODY_RIGHT -> "everybody got it right, so it tells nothing";
      case NOBODY_RIGHT -> "nobody got it right, so it tells nothing";
    };
  }

  private String choices() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < report.items().size(); i++) {
      Item item = quiz.items().get(i);
      String head = (i + 1) + "  " + item.id() + "  " + item.question();
      text.append("  ").append(Columns.printable(head)).append("\n");
      text.append(choices(report.items().get(i)));
    }
    return text.toString();
  }

  private static String choices(ItemReport item) {
    AlignedRows rows = new AlignedRows();
    rows.add(List.of("", "chosen", "best 27 %", "weakest 27 %"));
    for (Choice choice : item.choices()) {
      rows.add(
          List.of(
              (choice.right() ? "* " : "  ") + choice.option(),
              Integer.toString(choice.count()),
              Figures.percent(choice.upper()) + " %",
              Figures.percent(choice.lower()) + " %"));
    }
    return rows.text().lines().map(line -> "  " + line + "\n").collect(Collectors.joining());
  }
}

package io.faultwright.delivery;

import io.faultwright.quiz.Item;
import io.faultwright.quiz.Quiz;
import io.faultwright.quiz.Quiz.Variant;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Tables for answers on paper: a column for each question, a row for each participant. */
public final class AnswerTables {
  /** Without it spreadsheet programs take the file for another encoding, and names break. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();

  private AnswerTables() {}

  /** The heading of the table in which the trainer types a row for each sheet that comes back. */
  public static String toFill(Quiz quiz) {
    int items = quiz.variants().get(0).items().size();
    return table(heading(List.of("participant", "name", "handed-in"), items), List.of());
  }

  /** The numbers of the right choices. */
  public static String key(Quiz quiz) {
    return table(
        heading(List.of("participant"), quiz.variants().get(0).items().size()),
        quiz.variants().stream().map(one -> row(one, right(one))).toList());
  }

  private static List<String> right(Variant variant) {
    return variant.items().stream().map(Item::right).map(at -> "" + (at + 1)).toList();
  }

  private static List<String> heading(List<String> first, int items) {
    List<String> heading = new ArrayList<>(first);
    IntStream.rangeClosed(1, items).mapToObj(Integer::toString).forEach(heading::add);
    return heading;
  }

  private static List<String> row(Variant variant, List<String> cells) {
    List<String> row = new ArrayList<>(List.of(Integer.toString(variant.participant())));
    row.addAll(cells);
    return row;
  }

  private static String table(List<String> heading, List<List<String>> rows) {
    StringWriter text = new StringWriter();
    text.write(BYTE_ORDER_MARK);
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      printer.printRecord(heading);
      printer.printRecords(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}

package io.faultwright.site;

import io.faultwright.page.ChartSheet;
import io.faultwright.page.SitePaths;
import io.faultwright.piece.FileContent;
import io.faultwright.piece.Fingerprint;
import io.faultwright.piece.Made;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The charts of a symptom as files, and what is to be known of each as notes; and back. */
final class ChartFiles {
  private final String symptom;
  private final SortedMap<String, FileContent> files = new TreeMap<>();
  private final List<String> notes = new ArrayList<>();

  ChartFiles(String symptom) {
    this.symptom = symptom;
  }

  /**
   * Adds those in one language.
   *
   * @param folder of the language
   * @param diagnosis the same checks as data for guided diagnosis
   */
  void add(String folder, List<ChartSheet> sheets, byte[] diagnosis) {
    int number = 0;
    for (ChartSheet sheet : sheets) {
      number++;
      String path = folder + SitePaths.chart(symptom, number);
      files.put(path, FileContent.of(sheet.svg().getBytes(StandardCharsets.UTF_8)));
      notes.add(folder);
      notes.add(path);
      notes.add(sheet.scope());
      notes.add(Integer.toString(sheet.number()));
      notes.add(Integer.toString(sheet.count()));
    }
    files.put(folder + SitePaths.diagnosis(symptom), FileContent.of(diagnosis));
  }

  Made made() {
    return new Made(files, notes);
  }

  /** Those in one language. */
  static Drawn drawn(String folder, String symptom, Made made, Fingerprint from) {
    String diagnosis = folder + SitePaths.diagnosis(symptom);
    List<ChartSheet> sheets = new ArrayList<>();
    SortedMap<String, FileContent> files = new TreeMap<>();
    files.put(diagnosis, made.files().get(diagnosis));
    for (Iterator<String> notes = made.notes().iterator(); notes.hasNext(); ) {
      boolean wanted = notes.next().equals(folder);
      String path = notes.next();
      FileContent content = made.files().get(path);
      ChartSheet sheet =
          new ChartSheet(() -> text(content), notes.next(), number(notes), number(notes));
      if (wanted) {
        sheets.add(sheet);
        files.put(path, content);
      }
    }
    return new Drawn(sheets, files, from);
  }

  private static int number(Iterator<String> notes) {
    return Integer.parseInt(notes.next());
  }

  private static String text(FileContent content) {
    try {
      return new String(content.bytes(), StandardCharsets.UTF_8);
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
  }
}

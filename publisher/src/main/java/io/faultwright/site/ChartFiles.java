package io.faultwright.site;

import io.faultwright.page.ChartSheet;
import io.faultwright.page.SitePaths;
import io.faultwright.piece.Fingerprint;
import io.faultwright.piece.Made;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The charts of a symptom as files, and what is to be known of each as notes; and back. */
final class ChartFiles {
  private final String symptom;
  private final SortedMap<String, byte[]> files = new TreeMap<>();
  private final List<String> notes = new ArrayList<>();

  ChartFiles(String symptom) {
    this.symptom = symptom;
  }

  /**
   * Adds those in one language.
   *
   * @param folder of the language
   */
  void add(String folder, Drawn drawn) {
    int number = 0;
    for (ChartSheet sheet : drawn.sheets()) {
      number++;
      String path = folder + SitePaths.chart(symptom, number);
      files.put(path, sheet.svg().getBytes(StandardCharsets.UTF_8));
      notes.add(folder);
      notes.add(path);
      notes.add(sheet.scope());
      notes.add(Integer.toString(sheet.number()));
      notes.add(Integer.toString(sheet.count()));
    }
    files.put(folder + SitePaths.diagnosis(symptom), drawn.diagnosis());
  }

  Made made() {
    return new Made(files, notes);
  }

  /** Those in one language. */
  static Drawn drawn(String folder, String symptom, Made made, Fingerprint from) {
    return new Drawn(
        sheets(folder, made), made.files().get(folder + SitePaths.diagnosis(symptom)), from);
  }

  private static List<ChartSheet> sheets(String folder, Made made) {
    List<ChartSheet> sheets = new ArrayList<>();
    for (Iterator<String> notes = made.notes().iterator(); notes.hasNext(); ) {
      boolean wanted = notes.next().equals(folder);
      String svg = new String(made.files().get(notes.next()), StandardCharsets.UTF_8);
      String scope = notes.next();
      int number = Integer.parseInt(notes.next());
      ChartSheet sheet = new ChartSheet(svg, scope, number, Integer.parseInt(notes.next()));
      if (wanted) {
        sheets.add(sheet);
      }
    }
    return sheets;
  }
}

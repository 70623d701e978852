package io.faultwright.site;

import io.faultwright.page.ChartSheet;
import io.faultwright.page.SitePaths;
import io.faultwright.piece.Made;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The charts of a symptom as files, and what is to be known of each as notes; and back. */
final class ChartFiles {
  private ChartFiles() {}

  static Made made(String symptom, Drawn drawn) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    List<String> notes = new ArrayList<>();
    for (ChartSheet sheet : drawn.sheets()) {
      String path = SitePaths.chart(symptom, files.size() + 1);
      files.put(path, sheet.svg().getBytes(StandardCharsets.UTF_8));
      notes.add(path);
      notes.add(sheet.scope());
      notes.add(Integer.toString(sheet.number()));
      notes.add(Integer.toString(sheet.count()));
    }
    files.put(SitePaths.diagnosis(symptom), drawn.diagnosis());
    return new Made(files, notes);
  }

  static Drawn drawn(String symptom, Made made) {
    return new Drawn(sheets(made), made.files().get(SitePaths.diagnosis(symptom)));
  }

  private static List<ChartSheet> sheets(Made made) {
    List<ChartSheet> sheets = new ArrayList<>();
    for (Iterator<String> notes = made.notes().iterator(); notes.hasNext(); ) {
      String svg = new String(made.files().get(notes.next()), StandardCharsets.UTF_8);
      String scope = notes.next();
      int number = Integer.parseInt(notes.next());
      sheets.add(new ChartSheet(svg, scope, number, Integer.parseInt(notes.next())));
    }
    return sheets;
  }
}

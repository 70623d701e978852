package io.faultwright.guided;

import io.faultwright.flow.ScopedChart;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.page.SitePaths;
import io.faultwright.quantity.Refrigerant;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of data that the page for guided diagnosis loads as it needs them. */
public final class GuidedFiles {
  private final KnowledgeBase kb;

  public GuidedFiles(KnowledgeBase kb) {
    this.kb = kb;
  }

  /** What has to be known before a complaint is chosen. */
  public byte[] handbook(boolean draft) {
    return new HandbookData(kb).script(draft);
  }

  /** A symptom's diagnosis, with its charts. */
  public byte[] symptom(Symptom symptom, List<ScopedChart> charts) {
    return new SymptomData(kb).script(symptom, charts);
  }

  /** The curves that readings are read off, by their files. */
  public SortedMap<String, byte[]> curves() {
    SortedMap<String, byte[]> files = new TreeMap<>();
    if (kb.readings().values().stream().anyMatch(GuidedFiles::isReadOffACurve)) {
      files.put(SitePaths.curve(CurveData.ALTITUDE), CurveData.altitude());
      kb.equipment().builds().stream()
          .flatMap((Build build) -> build.model().refrigerant().stream())
          .map(kb.equipment().refrigerants()::get)
          .filter(Objects::nonNull)
          .distinct()
          .forEach((Refrigerant one) -> files.put(SitePaths.curve(one.id()), CurveData.of(one)));
    }
    return files;
  }

  private static boolean isReadOffACurve(io.faultwright.model.Reading reading) {
    return reading.derived().filter(form -> !form.bends().isEmpty()).isPresent();
  }
}

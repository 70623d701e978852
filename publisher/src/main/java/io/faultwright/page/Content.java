package io.faultwright.page;

import java.util.List;
import java.util.Locale;

/** What stands between the head and the foot of a page. */
public sealed interface Content
    permits StartSection,
        SymptomSection,
        FaultSection,
        ReadingSection,
        GuideSection,
        RefrigerantSection,
        SequenceSection,
        EquipmentSection,
        SafetySection,
        PartsSection,
        SearchSection,
        DiagnosisSection,
        StickersSection,
        IndexSection,
        FindingsSection,
        BulletinSection,
        ChangesSection,
        ReleasesSection {
  /** Paths of the scripts it needs beside that of every page, from the site's root; mostly none. */
  default List<String> scripts() {
    return List.of();
  }

  /** The name of its template, for instance {@code symptom}. */
  default String kind() {
    return getClass().getSimpleName().replace("Section", "").toLowerCase(Locale.ROOT);
  }
}

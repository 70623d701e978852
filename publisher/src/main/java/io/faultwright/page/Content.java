package io.faultwright.page;

import java.util.Locale;

/** What stands between the head and the foot of a page. */
public sealed interface Content
    permits StartSection,
        SymptomSection,
        FaultSection,
        ReadingSection,
        GuideSection,
        RefrigerantSection,
        EquipmentSection,
        SafetySection,
        IndexSection,
        FindingsSection,
        ChangesSection {
  /** The name of its template, for instance {@code symptom}. */
  default String kind() {
    return getClass().getSimpleName().replace("Section", "").toLowerCase(Locale.ROOT);
  }
}

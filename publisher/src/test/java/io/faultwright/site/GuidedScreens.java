package io.faultwright.site;

import java.util.List;

/** Addresses of the guided page that show each kind of its screens. */
final class GuidedScreens {
  private static final String MACHINE = "#model=BK-500";
  private static final String WARE = MACHINE + "&symptom=ware-not-clean";

  /** For the demonstration handbook about dishwashers. */
  static final List<String> OF_THE_DISHWASHERS =
      List.of(
          "",
          MACHINE,
          MACHINE + "&show=machine",
          MACHINE + "&show=new",
          WARE,
          WARE + "&r.filters=clean&r.wash-arms=turn",
          WARE + "&r.filters=clean&r.wash-arms=turn&ask=filters",
          WARE + "&r.filters=dirty&r.wash-arms=turn",
          WARE + "&r.filters=clean&r.wash-arms=turn&r.wash-temperature=48.9",
          WARE + "&r.filters=clean&r.wash-arms=turn&r.wash-temperature=400",
          WARE + "&r.filters=dirty&r.wash-arms=turn&show=hand-over",
          WARE + "&r.complaint=no-fill",
          MACHINE + "&symptom=rinse-too-cold&r.tap-open=no");

  private GuidedScreens() {}
}

package io.faultwright.page;

import io.faultwright.model.Caution;
import io.faultwright.model.Caution.Signal;
import io.faultwright.page.Target.Kind;
import io.faultwright.words.SignalWords;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Cautions as panels, gravest first. */
final class Cautions {
  /** The same order as on the charts. */
  static final Comparator<Caution> GRAVEST_FIRST =
      Comparator.comparing(Caution::signal).thenComparing(Caution::id);

  private final Desk desk;

  Cautions(Desk desk) {
    this.desk = desk;
  }

  List<CautionPanel> of(Collection<String> ids) {
    return ids.stream()
        .distinct()
        .map(desk.kb().cautions()::get)
        .filter(Objects::nonNull)
        .sorted(GRAVEST_FIRST)
        .map(this::panel)
        .toList();
  }

  CautionPanel panel(Caution caution) {
    return new CautionPanel(
        new Target(Kind.CAUTION, caution.id()).anchor(),
        caution.signal().name().toLowerCase(Locale.ROOT),
        SignalWords.of(caution.signal().name(), desk.words().say()),
        caution.signal() != Signal.NOTICE,
        caution.text());
  }
}

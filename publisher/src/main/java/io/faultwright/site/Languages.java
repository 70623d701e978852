package io.faultwright.site;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Since;
import io.faultwright.page.Tongue;
import io.faultwright.translation.Translation;
import java.util.List;
import java.util.stream.Stream;

/** The languages in which a handbook is published, its own first, and the handbook in each. */
final class Languages {
  private final KnowledgeBase kb;

  Languages(KnowledgeBase kb) {
    this.kb = kb;
  }

  List<Tongue> all() {
    return Stream.concat(
            Stream.of(Tongue.own(kb.handbook().language())),
            kb.handbook().translatedTo().stream().map(Tongue::other))
        .toList();
  }

  /** The handbook in one of them. */
  KnowledgeBase in(Tongue tongue) {
    return translated(kb, tongue);
  }

  /** The earlier revision in one of them. */
  Since in(Since since, Tongue tongue) {
    return new Since(
        translated(since.before(), tongue), translated(since.shared(), tongue), since.comparison());
  }

  /** An earlier revision in one of them. */
  KnowledgeBase earlier(KnowledgeBase before, Tongue tongue) {
    return translated(before, tongue);
  }

  private KnowledgeBase translated(KnowledgeBase one, Tongue tongue) {
    boolean own = tongue.tag().equals(kb.handbook().language());
    return own ? one : Translation.of(one, tongue.tag());
  }
}

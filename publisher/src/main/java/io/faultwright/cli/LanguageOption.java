package io.faultwright.cli;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.translation.Translation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** In which of its languages something of a handbook is written. */
final class LanguageOption {
  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Write it in this language of the handbook, for instance `de`.")
  private Optional<String> language = Optional.empty();

  /**
   * The knowledge base in that language.
   *
   * @throws Unreadable where the handbook is not in that language
   */
  KnowledgeBase of(KnowledgeBase kb) {
    String own = kb.handbook().language();
    String tag = language.orElse(own);
    List<String> known = new ArrayList<>(kb.handbook().translatedTo());
    if (tag.equals(own)) {
      return kb;
    }
    if (!known.contains(tag)) {
      known.add(own);
      String message = "the handbook is not in the language `" + tag + "`";
      throw new Unreadable(List.of(new Problem(List.of(), message, NearMatch.help(tag, known))));
    }
    return Translation.of(kb, tag);
  }
}

package io.faultwright.resolve;

import io.faultwright.model.Catalogue;
import io.faultwright.model.Catalogue.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the section {@code translations}. */
final class TranslationResolver {
  private final Context context;

  TranslationResolver(Context context) {
    this.context = context;
  }

  SortedMap<String, Catalogue> resolveAll() {
    SortedMap<String, Catalogue> catalogues = new TreeMap<>();
    context
        .outline()
        .translations()
        .forEach((language, texts) -> catalogues.put(language, catalogue(language, texts)));
    return catalogues;
  }

  private Catalogue catalogue(String language, SortedMap<String, Definition> texts) {
    SortedMap<String, Entry> entries = new TreeMap<>();
    texts.forEach((text, one) -> entries.put(text, entry(one)));
    return new Catalogue(language, entries);
  }

  private Entry entry(Definition definition) {
    if (!(definition.body() instanceof Scalar text)) {
      problem(
          definition,
          definition.what() + " must be a text, found " + definition.body().kind(),
          "put it in quotes if it has a colon, a comma or brackets");
    } else if (text.isBlank()) {
      problem(
          definition,
          definition.what() + " is empty",
          "write the translation, or remove the line until there is one");
    } else {
      return new Entry(definition.place(), text.text().strip());
    }
    return new Entry(definition.place(), "");
  }

  private void problem(Definition definition, String message, String help) {
    context.problems().add(definition.place(), message, help);
  }
}

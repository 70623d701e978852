package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.AccessWeights;
import io.faultwright.model.Handbook;
import io.faultwright.model.ShownUnits;
import io.faultwright.model.SignOffRules;
import io.faultwright.source.Place;
import io.faultwright.syntax.FolderReader;
import io.faultwright.syntax.Node.Scalar;
import java.net.URI;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the section {@code handbook}. */
final class HandbookResolver {
  private static final String TRANSLATED_TO = "translated-to";
  private static final List<String> KEYS =
      List.of(
          "title",
          "maker",
          "revision",
          "date",
          "language",
          "disclaimer",
          "hotline",
          "base",
          "start",
          "notes",
          "units",
          AccessWeightsResolver.ACCESS_WEIGHTS,
          TRANSLATED_TO,
          SignOffRulesResolver.SIGN_OFF);

  private final Context context;

  HandbookResolver(Context context) {
    this.context = context;
  }

  Handbook resolve() {
    return context.outline().handbook().map(this::read).orElseGet(this::missing);
  }

  private Handbook missing() {
    if (context.names().complete(Kind.SYMPTOM)) {
      context
          .problems()
          .add(
              new Place(FolderReader.MARKER, 1, 1, 1),
              "no file has the section `handbook`",
              "write `handbook:` with `title`, `maker`, `revision`, `date`, `language` and"
                  + " `disclaimer` below it");
    }
    Optional<String> none = Optional.empty();
    Place place = new Place(FolderReader.MARKER, 1, 1, 1);
    return new Handbook(
        place,
        "",
        "",
        "",
        "",
        "",
        "",
        none,
        none,
        none,
        List.of(),
        Optional.empty(),
        AccessWeights.USUAL,
        List.of(),
        SignOffRules.NONE);
  }

  private Handbook read(Definition definition) {
    Fields fields = Fields.of(definition, KEYS, context.problems());
    String language = fields.requireScalar("language").map(this::language).orElse("");
    return new Handbook(
        definition.place(),
        fields.requireText("title"),
        fields.requireText("maker"),
        fields.requireText("revision"),
        fields.requireScalar("date").map(this::date).orElse(""),
        language,
        fields.requireText("disclaimer"),
        fields.text("hotline"),
        fields.scalar("base").map(this::base),
        fields.scalar("start").map(guide -> context.names().reference(Kind.GUIDE, guide)),
        fields.texts("notes"),
        fields.scalar("units").flatMap(this::units),
        new AccessWeightsResolver(context).of(fields),
        translatedTo(fields, language),
        new SignOffRulesResolver(context.problems()).of(fields));
  }

  private Optional<ShownUnits> units(Scalar written) {
    String word = written.text().strip();
    Optional<ShownUnits> units = ShownUnits.of(word);
    if (units.isEmpty()) {
      problem(written, "is none of the units to show", NearMatch.help(word, ShownUnits.words()));
    }
    return units;
  }

  private String date(Scalar written) {
    return Dates.read(written, context.problems()).map(LocalDate::toString).orElse("");
  }

  private String language(Scalar written) {
    return LanguageTags.read(written, context.problems()).orElse("");
  }

  private List<String> translatedTo(Fields fields, String own) {
    Set<String> languages = new LinkedHashSet<>();
    for (Scalar written : fields.oneOrMore(TRANSLATED_TO)) {
      LanguageTags.read(written, context.problems())
          .ifPresent(tag -> translatedTo(written, tag, own, languages));
    }
    return List.copyOf(languages);
  }

  private void translatedTo(Scalar written, String tag, String own, Set<String> languages) {
    Set<String> known = context.outline().translations().keySet();
    if (tag.equals(own)) {
      problem(written, "is the language of the handbook itself", "name further languages only");
    } else if (!languages.add(tag)) {
      problem(written, "is named twice", "name every language once");
    } else if (!known.contains(tag) && context.outline().complete(Kind.TRANSLATION)) {
      String near = known.isEmpty() ? "" : "; " + NearMatch.help(tag, known);
      problem(
          written,
          "has no translations",
          "write them below `translations: { " + tag + ": … }`" + near);
    }
  }

  private String base(Scalar written) {
    String text = written.text().strip();
    if (!isWebAddress(text)) {
      problem(written, "is not a web address", "write it as in `https://service.example/handbook`");
    }
    return text;
  }

  private static boolean isWebAddress(String text) {
    try {
      return text.matches("https?://.+") && URI.create(text).getHost() != null;
    } catch (IllegalArgumentException wrong) {
      return false;
    }
  }

  private void problem(Scalar written, String message, String help) {
    context.problems().add(written.place(), Words.quoted(written.text()) + " " + message, help);
  }
}

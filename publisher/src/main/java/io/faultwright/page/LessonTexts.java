package io.faultwright.page;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Target.Kind;
import io.faultwright.prose.Destinations;
import io.faultwright.prose.Html;
import io.faultwright.prose.Markdown;
import io.faultwright.prose.Prose;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * The trainer's own texts of a session. Links lead to the published handbook, where it says where
 * it stands; pictures are put into the page.
 */
final class LessonTexts {
  private static final int TOP_LEVEL = 3;

  private final KnowledgeBase kb;
  private final SortedMap<String, byte[]> pictures;
  private final List<Problem> problems = new ArrayList<>();
  private int texts;

  LessonTexts(KnowledgeBase kb, SortedMap<String, byte[]> pictures) {
    this.kb = kb;
    this.pictures = pictures;
  }

  /** What leads nowhere in the texts so far. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  Html html(String markdown, String title, Place place) {
    Prose prose =
        new Markdown(destinations(), TOP_LEVEL).render(markdown, title, "text-" + ++texts + "-");
    prose.dangling().stream()
        .filter(one -> !isKnown(one.target()))
        .map(one -> problem(place, one.target()))
        .forEach(problems::add);
    return prose.html();
  }

  private static Problem problem(Place place, String target) {
    return Problem.at(
        place,
        "`" + target + "` leads nowhere",
        "links may lead to `https:`, `http:` and `mailto:` addresses, or to `symptom:`, `fault:`,"
            + " `reading:`, `sequence:` or `guide:` with an id; pictures are PNG or JPEG files in `guides`");
  }

  /** Without an address of the handbook, a link to one of its pages is mere text. */
  private boolean isKnown(String target) {
    int colon = target.indexOf(':');
    return colon > 0 && ids(target.substring(0, colon)).contains(target.substring(colon + 1));
  }

  private Set<String> ids(String kind) {
    return switch (kind) {
      case "symptom" -> kb.symptoms().keySet();
      case "fault" -> kb.faults().keySet();
      case "reading" -> kb.readings().keySet();
      case "sequence" -> kb.sequences().keySet();
      case "guide" -> kb.guides().keySet();
      default -> Set.of();
    };
  }

  private Destinations destinations() {
    return new Destinations() {
      @Override
      public Optional<String> page(String kind, String id) {
        return kb.handbook()
            .base()
            .filter(base -> ids(kind).contains(id))
            .map(base -> base.replaceFirst("/+$", "") + "/" + address(kind, id));
      }

      @Override
      public Optional<String> picture(String path) {
        return Optional.ofNullable(pictures.get(path)).map(bytes -> data(path, bytes));
      }
    };
  }

  private static String address(String kind, String id) {
    Kind of =
        switch (kind) {
          case "symptom" -> Kind.SYMPTOM;
          case "fault" -> Kind.FAULT;
          case "reading" -> Kind.READING;
          case "sequence" -> Kind.SEQUENCE;
          default -> Kind.GUIDE;
        };
    return SitePaths.address(new Target(of, id));
  }

  private static String data(String path, byte[] bytes) {
    String type = path.toLowerCase(java.util.Locale.ROOT).endsWith(".png") ? "png" : "jpeg";
    return "data:image/" + type + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }
}

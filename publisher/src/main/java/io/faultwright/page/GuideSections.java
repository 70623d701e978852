package io.faultwright.page;

import io.faultwright.diagnostic.Problem;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Target.Kind;
import io.faultwright.prose.Destinations;
import io.faultwright.prose.Html;
import io.faultwright.prose.Markdown;
import io.faultwright.prose.Prose;
import io.faultwright.prose.Prose.Dangling;
import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Guides, rendered, with their links settled. */
final class GuideSections {
  private final Desk desk;
  private final Set<String> pictures;

  /**
   * @param pictures paths of the pictures there are, relative to the {@code guides} folder
   */
  GuideSections(Desk desk, Set<String> pictures) {
    this.desk = desk;
    this.pictures = pictures;
  }

  /**
   * The guide as a section.
   *
   * @param topLevel level of its highest headings
   */
  GuideSection of(Guide guide, int topLevel) {
    return new GuideSection(anchor(guide), guide.title(), html(guide, topLevel), uses(guide));
  }

  /** The guide's text without its title. */
  Html html(Guide guide, int topLevel) {
    return render(guide, topLevel).html();
  }

  /** Links and pictures of the guide that lead nowhere. */
  Stream<Problem> problems(Guide guide) {
    return render(guide, 1).dangling().stream().map(dangling -> problem(guide, dangling));
  }

  private Prose render(Guide guide, int topLevel) {
    return new Markdown(destinations(), topLevel)
        .render(guide.markdown(), guide.title(), anchor(guide) + "-");
  }

  private static String anchor(Guide guide) {
    return new Target(Kind.GUIDE, guide.id()).anchor();
  }

  private static Problem problem(Guide guide, Dangling dangling) {
    Place place =
        new Place(
            guide.place().file(),
            guide.place().line() + dangling.line() - 1,
            dangling.column(),
            dangling.target().length());
    return Problem.at(
        place,
        "`" + dangling.target() + "` leads nowhere",
        "links may lead to `https:`, `http:` and `mailto:` addresses, to `symptom:`, `fault:`,"
            + " `reading:`, `sequence:` or `guide:` with an id, to another guide's file or to `#a-heading`;"
            + " pictures are PNG or JPEG files in `guides`");
  }

  private Destinations destinations() {
    return new Destinations() {
      @Override
      public Optional<String> page(String kind, String id) {
        return target(desk.kb(), kind, id).map(to -> desk.links().href(to.kind(), to.id()));
      }

      @Override
      public Optional<String> picture(String path) {
        return Optional.of(path).filter(pictures::contains).map(desk.links()::picture);
      }
    };
  }

  private static Optional<Target> target(KnowledgeBase kb, String kind, String id) {
    return switch (kind) {
      case "symptom" ->
          Optional.of(new Target(Kind.SYMPTOM, id)).filter(in(kb.symptoms().keySet()));
      case "fault" -> Optional.of(new Target(Kind.FAULT, id)).filter(in(kb.faults().keySet()));
      case "reading" ->
          Optional.of(new Target(Kind.READING, id)).filter(in(kb.readings().keySet()));
      case "sequence" ->
          Optional.of(new Target(Kind.SEQUENCE, id)).filter(in(kb.sequences().keySet()));
      case "guide" -> Optional.of(new Target(Kind.GUIDE, id)).filter(in(kb.guides().keySet()));
      default -> Optional.empty();
    };
  }

  private static Predicate<Target> in(Set<String> ids) {
    return target -> ids.contains(target.id());
  }

  private List<Link> uses(Guide guide) {
    Optional<String> id = Optional.of(guide.id());
    KnowledgeBase kb = desk.kb();
    return Stream.of(
            kb.symptoms().values().stream()
                .filter(symptom -> symptom.guide().equals(id))
                .map(symptom -> desk.links().symptom(symptom.id())),
            kb.readings().values().stream()
                .filter(reading -> reading.guide().equals(id))
                .map(reading -> desk.links().reading(reading.id())),
            kb.faults().values().stream()
                .filter(fault -> fault.guide().equals(id))
                .map(fault -> desk.links().fault(fault.id())))
        .flatMap(links -> links)
        .toList();
  }
}

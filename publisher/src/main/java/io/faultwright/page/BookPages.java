package io.faultwright.page;

import io.faultwright.layout.Paper;
import io.faultwright.model.Fault;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Reading;
import io.faultwright.model.Sequence;
import io.faultwright.model.Symptom;
import java.util.List;

/** The sections of the book. */
public final class BookPages {
  private final KnowledgeBase kb;
  private final Edition edition;
  private final Paper paper;
  private final Desk desk;

  public BookPages(KnowledgeBase kb, Edition edition, Paper paper) {
    this.kb = kb;
    this.edition = edition;
    this.paper = paper;
    this.desk = Desk.of(kb, new BookAddresses(edition.pictures()));
  }

  public Book book() {
    return new Book(
        Frames.of(kb.handbook(), edition.draft()),
        kb.handbook().date(),
        symptoms(),
        readings(),
        Alphabet.sorted(kb.faults().values(), Fault::title).stream()
            .map(new FaultSections(desk)::of)
            .toList(),
        Alphabet.sorted(kb.sequences().values(), Sequence::title).stream()
            .map(new SequenceSections(desk, true)::of)
            .toList(),
        Alphabet.sorted(kb.guides().values(), Guide::title).stream()
            .map(guide -> new GuideSections(desk, edition.pictures().keySet()).of(guide, 4))
            .toList(),
        new RefrigerantSections(desk).all(),
        new EquipmentSections(desk).section(),
        new SafetySections(desk).section(),
        edition.draft() ? List.of(new FindingsSections(desk).of(edition.findings())) : List.of(),
        edition.since().stream().map(since -> new ChangesSections(desk, since).section()).toList(),
        new IndexSections(desk).section());
  }

  private List<SymptomSection> symptoms() {
    ChartFigures charts = new ChartFigures(edition.charts(), desk.words().say());
    return Alphabet.sorted(kb.symptoms().values(), Symptom::title).stream()
        .map(
            symptom ->
                new SymptomSections(desk, false)
                    .of(symptom, charts.inBook(symptom, desk.links(), paper)))
        .toList();
  }

  private List<ReadingSection> readings() {
    return Alphabet.sorted(kb.readings().values(), Reading::title).stream()
        .map(new ReadingSections(desk)::of)
        .toList();
  }
}

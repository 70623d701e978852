package io.faultwright.site;

import com.microsoft.playwright.Page;
import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.ScopedChart;
import io.faultwright.guided.GuidedFiles;
import io.faultwright.guided.GuidedScript;
import io.faultwright.model.Answer;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.model.Value;
import io.faultwright.page.Edition;
import io.faultwright.page.SitePages;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Tongue;
import io.faultwright.render.html.SiteHtml;
import io.faultwright.run.Verdict;
import io.faultwright.site.Situations.Told;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The page for guided diagnosis, told situations by its address. */
final class GuidedPage {
  /** Goes to each address and reads what the page then says. */
  private static final String VISIT =
      """
      async (addresses) => {
        const root = document.getElementById("guided");
        const loaded = async (symptom) => {
          for (let i = 0; i < 6000; i++) {
            const data = faultwright.symptoms[symptom];
            if (data && data.ready) return;
            await new Promise((later) => setTimeout(later, 5));
          }
          throw new Error("the data of " + symptom + " are not there at " + location.hash);
        };
        const said = [];
        for (const [symptom, address] of addresses) {
          const before = location.href;
          const shown = new Promise((later) => addEventListener("hashchange", later, { once: true }));
          location.hash = address;
          if (location.href !== before) await shown;
          await loaded(symptom);
          said.push([root.dataset.verdict, root.dataset.answers, root.dataset.status]);
        }
        return said;
      }
      """;

  private final Page page;

  private GuidedPage(Page page) {
    this.page = page;
  }

  /** Publishes what the page takes, and neither charts nor other pages. */
  static void publish(KnowledgeBase kb, boolean draft, Path site) throws IOException {
    publish(kb, symptom -> ChartBuilder.charts(kb, symptom), draft, site);
  }

  /** The same of charts that were drawn up before. */
  static void publish(
      KnowledgeBase kb, Function<Symptom, List<ScopedChart>> charts, boolean draft, Path site)
      throws IOException {
    Edition edition =
        new Edition(new TreeMap<>(), List.of(), new TreeMap<>(), draft, false, Optional.empty());
    Tongue own = Tongue.own(kb.handbook().language());
    SitePages.Plan plan =
        new SitePages(kb, edition, own, List.of(own))
            .plans().stream()
                .filter(one -> one.path().equals("diagnose.html"))
                .findFirst()
                .orElseThrow();
    GuidedFiles guided = new GuidedFiles(kb);
    Map<String, byte[]> files = new TreeMap<>(guided.curves());
    files.put(plan.path(), utf8(new SiteHtml().print(plan.page().get())));
    files.put(SitePaths.DIAGNOSIS_SCRIPT, utf8(GuidedScript.text()));
    files.put(SitePaths.DIAGNOSIS_HANDBOOK, guided.handbook(draft));
    for (Symptom symptom : kb.symptoms().values()) {
      byte[] data = guided.symptom(symptom, charts.apply(symptom));
      files.put(SitePaths.diagnosis(symptom.id()), data);
    }
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path to = site.resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
    for (String left : List.of("style.css", "offline.js", "offline-words.js", "icon-192.png")) {
      Files.writeString(site.resolve(left), "");
    }
    Files.writeString(site.resolve("icon.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static GuidedPage open(Page page, Path site) {
    page.navigate(site.resolve("diagnose.html").toUri().toString());
    page.waitForFunction("() => !document.getElementById('guided').hidden");
    return new GuidedPage(page);
  }

  /** What the page says in each situation: how far it got, and the answers. */
  List<String> said(List<Told> situations) {
    List<List<String>> addresses =
        situations.stream().map(told -> List.of(told.symptom(), address(told))).toList();
    List<String> said = new ArrayList<>();
    for (Object each : (List<?>) page.evaluate(VISIT, addresses)) {
      List<?> parts = (List<?>) each;
      said.add(parts.get(0) + " [" + parts.get(1) + "]");
    }
    return said;
  }

  /** What the engine says, in the same form. */
  static String said(Verdict verdict) {
    return verdict.status().word()
        + " ["
        + verdict.answers().stream().map(GuidedPage::said).collect(Collectors.joining(" "))
        + "]";
  }

  private static String said(Answer answer) {
    String kind =
        answer instanceof Answer.OfFault
            ? "fault"
            : answer instanceof Answer.OfReferral ? "refer" : "escalate";
    return kind + ":" + answer.name();
  }

  /** The address of a situation. */
  static String address(Told told) {
    Map<String, String> facts = new TreeMap<>(told.situation().equipment());
    List<String> parts = new ArrayList<>();
    for (String fact : List.of(Equipment.MODEL, Equipment.SOFTWARE)) {
      parts.add(fact + "=" + encoded(facts.getOrDefault(fact, "?")));
      facts.remove(fact);
    }
    facts.forEach((fact, value) -> parts.add("f." + fact + "=" + encoded(value)));
    parts.add("symptom=" + told.symptom());
    told.situation()
        .readings()
        .forEach((id, value) -> parts.add("r." + id + "=" + encoded(text(value))));
    return "#" + String.join("&", parts);
  }

  private static String text(Value value) {
    return value.match(Value.Word::id, number -> text(number.amount()), () -> "untaken");
  }

  private static String text(BigFraction number) {
    return number.getNumerator() + "/" + number.getDenominator();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}

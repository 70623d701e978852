package io.faultwright.page;

import io.faultwright.finding.Finding;
import io.faultwright.finding.Severity;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Symptom;
import io.faultwright.page.ReviewSheet.CaseItem;
import io.faultwright.page.ReviewSheet.Change;
import io.faultwright.page.ReviewSheet.Complaint;
import io.faultwright.page.ReviewSheet.Other;
import io.faultwright.page.ReviewSheet.Plain;
import io.faultwright.page.ReviewSheet.PlainGroup;
import io.faultwright.page.ReviewSheet.PlainItem;
import io.faultwright.page.ReviewSheet.Signer;
import io.faultwright.page.ReviewSheet.Signing;
import io.faultwright.plain.Hint;
import io.faultwright.plain.PlainRule;
import io.faultwright.release.Proof;
import io.faultwright.release.SignOffState;
import io.faultwright.release.Signature;
import io.faultwright.review.LastChange;
import io.faultwright.review.LastChange.Commit;
import io.faultwright.review.RuleReview;
import io.faultwright.review.SymptomReview;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The report for reviewers. */
public final class ReviewSheets {
  /** Things that changed with a commit; more are counted only. */
  private static final int MOST_PARTS = 5;

  private final ReviewSource source;
  private final KnowledgeBase kb;
  private final Wording words;
  private final RegionFacts facts;
  private final Map<Signed, SignOffState> signOffs;

  private ReviewSheets(ReviewSource source) {
    this.source = source;
    this.kb = source.kb();
    this.words = new Wording(kb);
    this.facts = new RegionFacts(words);
    this.signOffs = source.bySigned();
  }

  public static ReviewSheet of(ReviewSource source) {
    ReviewSheets sheets = new ReviewSheets(source);
    return new ReviewSheet(
        Frames.of(source.kb().handbook(), false),
        sheets.facts(),
        sheets.complaints(),
        sheets.others(),
        new FindingsSections(Desk.of(source.kb(), new ReviewAddresses())).of(source.findings()),
        sheets.plain());
  }

  private List<String> facts() {
    long errors = source.findings().stream().filter(ReviewSheets::isError).count();
    long rules = count(SignedKind.RULE);
    long untested =
        source.symptoms().stream()
            .flatMap(symptom -> symptom.rules().stream())
            .filter(rule -> rule.cases().isEmpty())
            .count();
    return List.of(
        count(SignedKind.SYMPTOM) + " complaints with " + rules + " rules.",
        errors + " errors and " + (source.findings().size() - errors) + " warnings.",
        untested + " rules that no recorded case fires.",
        signed(SignedKind.RULE) + " of " + rules + " rules carry a signature that holds.",
        roles());
  }

  private static boolean isError(Finding finding) {
    return finding.kind().severity() == Severity.ERROR;
  }

  private long count(SignedKind kind) {
    return signOffs.keySet().stream().filter(one -> one.kind() == kind).count();
  }

  private long signed(SignedKind kind) {
    return signOffs.values().stream()
        .filter(one -> one.of().kind() == kind)
        .filter(one -> one.signatures().stream().anyMatch(Signature::holds))
        .count();
  }

  private String roles() {
    String roles =
        Stream.of(SignedKind.values())
            .filter(kind -> !kb.handbook().signOffs().of(kind).isEmpty())
            .map(kind -> kind.word() + " " + String.join(", ", kb.handbook().signOffs().of(kind)))
            .collect(Collectors.joining("; "));
    return roles.isEmpty()
        ? "The title page asks for no sign-off."
        : "Has to sign before a release: " + roles + ".";
  }

  private List<Complaint> complaints() {
    Map<String, SymptomReview> reviews =
        source.symptoms().stream().collect(Collectors.toMap(SymptomReview::symptom, one -> one));
    return Alphabet.sorted(kb.symptoms().values(), Symptom::title).stream()
        .map(symptom -> complaint(symptom, reviews.get(symptom.id())))
        .toList();
  }

  private Complaint complaint(Symptom symptom, SymptomReview review) {
    return new Complaint(
        ReviewAddresses.page(symptom.id()),
        symptom.id(),
        symptom.title(),
        symptom.about(),
        CasesSheets.line(symptom.place()),
        source.proofs().getOrDefault(symptom.id(), ""),
        lines(symptom.applies()),
        lines(symptom.recognise()),
        symptom.first().stream()
            .map(one -> new Fact(words.condition(one.when()), words.symptom(one.otherwise())))
            .toList(),
        symptom.nevers().values().stream()
            .map(never -> new Fact(words.condition(never.when()), never.because()))
            .toList(),
        change(review.change(), new Signed(SignedKind.SYMPTOM, symptom.id())),
        signing(new Signed(SignedKind.SYMPTOM, symptom.id())),
        new DecisionTables(kb, symptom, review, source.findings()).table(),
        rules(symptom, review));
  }

  private List<String> lines(Condition condition) {
    return condition.equals(Condition.ALWAYS) ? List.of() : words.lines(condition);
  }

  private List<ReviewSheet.Rule> rules(Symptom symptom, SymptomReview review) {
    Map<String, RuleReview> reviews =
        review.rules().stream().collect(Collectors.toMap(RuleReview::rule, one -> one));
    List<io.faultwright.model.Rule> written =
        Written.order(symptom.rules().values(), io.faultwright.model.Rule::place);
    List<ReviewSheet.Rule> rules = new ArrayList<>();
    for (io.faultwright.model.Rule rule : written) {
      List<Link> silences =
          written.stream()
              .filter(other -> rule.insteadOf().contains(other.id()))
              .map(other -> new Link("rule " + (written.indexOf(other) + 1), "#rule-" + other.id()))
              .toList();
      rules.add(rule(symptom, rule, reviews.get(rule.id()), rules.size() + 1, silences));
    }
    return rules;
  }

  private ReviewSheet.Rule rule(
      Symptom symptom,
      io.faultwright.model.Rule rule,
      RuleReview review,
      int number,
      List<Link> silences) {
    return new ReviewSheet.Rule(
        number,
        rule.id(),
        CasesSheets.line(rule.place()),
        lines(rule.when()),
        words.conclusion(rule.conclusion()),
        rule.because(),
        silences,
        review.region().boxes().stream().map(facts::of).toList(),
        review.region().whole(),
        review.cases().stream().map(id -> item(kb.cases().get(id))).toList(),
        change(review.change(), Signed.rule(symptom.id(), rule.id())),
        signing(Signed.rule(symptom.id(), rule.id())));
  }

  private static CaseItem item(io.faultwright.model.Case one) {
    return new CaseItem(
        one.id(), one.origin(), one.note(), one.confirmed(), CasesSheets.line(one.place()));
  }

  private static Change change(LastChange change, Signed signed) {
    String text =
        switch (change.state()) {
          case NO_HISTORY -> "no history here";
          case NOT_COMMITTED -> "changed since the last commit, not committed";
          case COMMITTED -> commit(change.commit());
          case BEFORE -> "before " + commit(change.commit()) + "; older commits were not looked at";
        };
    return new Change(text, change.commit().map(Commit::id).orElse(""), parts(change, signed));
  }

  /** Itself first; few of the others. */
  private static List<String> parts(LastChange change, Signed signed) {
    List<String> parts =
        change.parts().stream()
            .sorted(Comparator.comparing((String part) -> !part.equals(signed.toString())))
            .map(part -> part.equals(signed.toString()) ? signed.kind().word() + " itself" : part)
            .toList();
    return parts.size() <= MOST_PARTS
        ? parts
        : Stream.concat(
                parts.stream().limit(MOST_PARTS),
                Stream.of("and " + (parts.size() - MOST_PARTS) + " more things"))
            .toList();
  }

  private static String commit(Optional<Commit> commit) {
    return commit.map(one -> one.date() + ", " + one.summary()).orElse("");
  }

  private Signing signing(Signed signed) {
    SignOffState state = signOffs.get(signed);
    return new Signing(
        state.signatures().stream().map(ReviewSheets::signer).toList(),
        List.copyOf(state.missing()));
  }

  private static Signer signer(Signature signature) {
    return new Signer(
        signature.signOff().name()
            + ", "
            + signature.signOff().role()
            + ", "
            + signature.signOff().date(),
        signature.proof().words(),
        signature.holds(),
        why(signature),
        signature.signOff().note());
  }

  private static String why(Signature signature) {
    return switch (signature.standing()) {
      case HOLDS -> "";
      case LAPSED -> "lapsed: " + String.join(", ", signature.changed());
      case OWN -> "does not count: signed by its author, or nobody says who wrote it";
      case BROKEN -> "does not count: " + reason(signature.proof());
    };
  }

  private static String reason(Proof proof) {
    return proof.reason().isEmpty() ? proof.words() : proof.reason();
  }

  private List<Other> others() {
    return source.signOffs().stream()
        .filter(one -> one.of().kind() != SignedKind.RULE && one.of().kind() != SignedKind.SYMPTOM)
        .map(
            one ->
                new Other(
                    one.of().kind().word(),
                    name(one.of()),
                    CasesSheets.line(one.place()),
                    signing(one.of())))
        .toList();
  }

  private String name(Signed signed) {
    return switch (signed.kind()) {
      case LIMITS -> words.subject(signed.id());
      case GUIDE -> kb.guides().get(signed.id()).title();
      case SEQUENCE -> kb.sequences().get(signed.id()).title();
      default -> signed.id();
    };
  }

  private Plain plain() {
    Map<PlainRule, List<Hint>> byRule =
        source.plain().hints().stream().collect(Collectors.groupingBy(Hint::rule));
    return new Plain(
        source.plain().applies(),
        source.plain().steps(),
        source.plain().most(),
        Stream.of(PlainRule.values())
            .map(rule -> group(rule, byRule.getOrDefault(rule, List.of())))
            .toList());
  }

  /** The same text once, in the order in which texts come first. */
  private static PlainGroup group(PlainRule rule, List<Hint> hints) {
    Map<List<String>, List<Fact>> items = new LinkedHashMap<>();
    for (Hint hint : hints) {
      items
          .computeIfAbsent(List.of(hint.text(), hint.reason()), none -> new ArrayList<>())
          .add(new Fact(hint.of(), CasesSheets.line(hint.place())));
    }
    return new PlainGroup(
        rule.title(),
        rule.sure(),
        items.entrySet().stream()
            .map(one -> new PlainItem(one.getKey().get(0), one.getKey().get(1), one.getValue()))
            .toList());
  }
}

package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * The report for reviewers.
 *
 * @param frame title, language and edition of the handbook
 * @param facts what there is to look at, in sentences
 * @param complaints the complaints, each a page of its own
 * @param others what else can be signed
 * @param findings what the check found
 * @param plain the texts
 */
public record ReviewSheet(
    Frame frame,
    List<String> facts,
    List<Complaint> complaints,
    List<Other> others,
    FindingsSection findings,
    Plain plain) {
  /**
   * Who signed something.
   *
   * @param signers those who did
   * @param missing roles that have to and did not
   */
  public record Signing(List<Signer> signers, List<String> missing) {}

  /**
   * A signature.
   *
   * @param text by whom, as what, when
   * @param name whether to believe the name
   * @param holds whether it counts
   * @param why it does not; else empty
   * @param note what the person says; may be empty
   */
  public record Signer(String text, String name, boolean holds, String why, String note) {}

  /**
   * When something last changed.
   *
   * @param text date and summary, or why they are not known
   * @param id of the commit; may be empty
   * @param parts what changed then; may be empty
   */
  public record Change(String text, String id, List<String> parts) {}

  /**
   * Something that can be signed and is no rule.
   *
   * @param kind what it is
   * @param name its title, or its id
   * @param place file and line
   * @param signing who signed it
   */
  public record Other(String kind, String name, String place, Signing signing) {}

  /**
   * A complaint.
   *
   * @param path file of its page
   * @param id of the symptom
   * @param title of the symptom
   * @param about a sentence or two; may be empty
   * @param place file and line
   * @param proof what was proved
   * @param applies the equipment; none: all
   * @param recognise what defines it
   * @param first what must be right before it is worked, and what is worked where it is not
   * @param nevers what cannot happen here, and why
   * @param change when its meaning last changed
   * @param signing who signed it
   * @param table its rules side by side
   * @param rules its rules, in the written order
   */
  public record Complaint(
      String path,
      String id,
      String title,
      String about,
      String place,
      String proof,
      List<String> applies,
      List<String> recognise,
      List<Fact> first,
      List<Fact> nevers,
      Change change,
      Signing signing,
      DecisionTable table,
      List<Rule> rules) {}

  /**
   * A rule.
   *
   * @param number position in the symptom, from 1
   * @param id of the rule; its anchor is {@code rule-} and the id
   * @param place file and line
   * @param when its conditions, a line each; none: always
   * @param then what follows
   * @param because why
   * @param silences rules that are silent where it holds
   * @param regions where it answers; tests that hold together in each, none: everywhere
   * @param regionsWhole whether those are all
   * @param cases the recorded cases that fire it
   * @param change when its meaning last changed
   * @param signing who signed it
   */
  public record Rule(
      int number,
      String id,
      String place,
      List<String> when,
      String then,
      String because,
      List<Link> silences,
      List<List<Fact>> regions,
      boolean regionsWhole,
      List<CaseItem> cases,
      Change change,
      Signing signing) {}

  /**
   * A recorded case.
   *
   * @param id of the case
   * @param origin where it comes from; absent where it is made up
   * @param note why it is recorded; may be empty
   * @param confirmed whether a person says that its outcome is right
   * @param place file and line
   */
  public record CaseItem(
      String id, Optional<String> origin, String note, boolean confirmed, String place) {}

  /**
   * Texts against the rules of plain language.
   *
   * @param applies whether they are in English
   * @param steps how many steps were looked at
   * @param most words of a sentence
   * @param rules what speaks against them, rule by rule
   */
  public record Plain(boolean applies, int steps, int most, List<PlainGroup> rules) {}

  /**
   * Texts that one rule speaks against.
   *
   * @param title of the rule
   * @param sure whether that is counted; else a person has to look
   * @param items the texts
   */
  public record PlainGroup(String title, boolean sure, List<PlainItem> items) {}

  /**
   * A text.
   *
   * @param text the step
   * @param reason what in it; words of it stand between backticks
   * @param where what it belongs to, with file and line; several where it stands several times
   */
  public record PlainItem(String text, String reason, List<Fact> where) {}
}

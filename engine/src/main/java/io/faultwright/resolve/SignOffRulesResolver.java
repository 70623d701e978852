package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.SignOffRules;
import io.faultwright.model.SignedKind;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads which roles have to sign what. */
final class SignOffRulesResolver {
  static final String SIGN_OFF = "sign-off";
  private static final String FOUR_EYES = "four-eyes";
  private static final List<String> YES_NO = List.of("yes", "no");
  private static final List<String> KEYS =
      List.of("symptom", "rule", "limits", "chart", "guide", "sequence", FOUR_EYES);

  private final Problems problems;

  SignOffRulesResolver(Problems problems) {
    this.problems = problems;
  }

  SignOffRules of(Fields handbook) {
    return handbook.read(SIGN_OFF, this::rules, SignOffRules.NONE);
  }

  private SignOffRules rules(Node node) {
    Fields fields = new Fields(node, "`" + SIGN_OFF + "`", node.place(), KEYS, problems);
    SortedMap<SignedKind, SortedSet<String>> roles = new TreeMap<>();
    for (SignedKind kind : SignedKind.values()) {
      SortedSet<String> of = roles(fields.oneOrMore(kind.word()));
      if (!of.isEmpty()) {
        roles.put(kind, of);
      }
    }
    return new SignOffRules(roles, fields.scalar(FOUR_EYES).map(this::yes).orElse(false));
  }

  private SortedSet<String> roles(List<Scalar> written) {
    SortedSet<String> roles = new TreeSet<>();
    for (Scalar role : written) {
      if (Ids.checkName("a role", role, problems) && !roles.add(role.text())) {
        problems.add(
            role.place(), Words.quoted(role.text()) + " is named twice", "name every role once");
      }
    }
    return roles;
  }

  private boolean yes(Scalar written) {
    String word = written.text().strip();
    if (!YES_NO.contains(word)) {
      problems.add(
          written.place(),
          "`" + FOUR_EYES + "` takes `yes` or `no`, found " + Words.quoted(word),
          NearMatch.help(word, YES_NO));
    }
    return word.equals("yes");
  }
}

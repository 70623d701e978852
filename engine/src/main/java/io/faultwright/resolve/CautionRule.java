package io.faultwright.resolve;

import io.faultwright.model.Access;
import io.faultwright.model.Caution;
import io.faultwright.syntax.Node.Scalar;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;

/** Adds to the cautions written at a reading or a step those that cover its kind of access. */
final class CautionRule {
  private final Names names;
  private final Collection<Caution> cautions;

  CautionRule(Names names, Collection<Caution> cautions) {
    this.names = names;
    this.cautions = List.copyOf(cautions);
  }

  SortedSet<String> forAccess(Access access, List<Scalar> written) {
    SortedSet<String> ids = names.references(Kind.CAUTION, written);
    cautions.stream()
        .filter(caution -> caution.covers().contains(access))
        .forEach(caution -> ids.add(caution.id()));
    return ids;
  }
}

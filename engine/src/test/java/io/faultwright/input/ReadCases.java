package io.faultwright.input;

import io.faultwright.diagnostic.Problem;
import io.faultwright.input.CaseInput.Item;
import io.faultwright.resolve.CaseIntake;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.source.SourceFile;
import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every case of a file at once. */
public final class ReadCases {
  private ReadCases() {}

  public static GivenCases read(SourceFile file, Resolution base, TableUse use) {
    CaseInput input = open(file, base, use);
    CaseIntake intake = base.intake();
    List<GivenCase> cases = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Optional<Item> item = input.next(); item.isPresent(); item = input.next()) {
      problems.addAll(item.get().problems());
      item.get()
          .entry()
          .map(intake::read)
          .ifPresent(
              read -> {
                cases.addAll(read.cases());
                problems.addAll(read.problems());
              });
    }
    return new GivenCases(cases, problems);
  }

  static CaseInput open(SourceFile file, Resolution base, TableUse use) {
    BufferedReader text = new BufferedReader(new StringReader(file.text()));
    return CaseFile.open(file.path(), text, base.knowledge(), use);
  }
}

package io.faultwright.field;

import java.util.List;

/**
 * What recorded jobs say about a knowledge base.
 *
 * @param handbook title of the handbook
 * @param counts rows read, run, skipped
 * @param symptoms those with rows, by id
 * @param uncounted rows of further kinds, which are not compared
 * @param remarks what technicians did not understand, the first ones
 * @param furtherRemarks how many more there are
 * @param frequencies of every fault, by id
 */
public record FieldReport(
    String handbook,
    RowCounts counts,
    List<SymptomReport> symptoms,
    long uncounted,
    List<Remark> remarks,
    long furtherRemarks,
    List<FrequencyUpdate> frequencies) {
  public FieldReport {
    symptoms = List.copyOf(symptoms);
    remarks = List.copyOf(remarks);
    frequencies = List.copyOf(frequencies);
  }
}

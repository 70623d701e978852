package io.faultwright.page;

import java.util.List;

/**
 * The whole handbook as one document.
 *
 * @param frame head and foot
 * @param date of the revision, ISO 8601
 * @param symptoms with their charts and rules
 * @param readings how each is taken
 * @param faults with their repairs
 * @param sequences of operation
 * @param guides pages of prose
 * @param refrigerants pressure and temperature of each
 * @param equipment families, options, models, nameplate
 * @param safety cautions and disclaimer
 * @param findings in drafts, one; else none
 * @param changes what changed since an earlier revision: one, or none
 * @param index everything by name
 */
public record Book(
    Frame frame,
    String date,
    List<SymptomSection> symptoms,
    List<ReadingSection> readings,
    List<FaultSection> faults,
    List<SequenceSection> sequences,
    List<GuideSection> guides,
    List<RefrigerantSection> refrigerants,
    EquipmentSection equipment,
    SafetySection safety,
    List<FindingsSection> findings,
    List<ChangesSection> changes,
    IndexSection index) {}

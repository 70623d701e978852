/**
 * Generated knowledge bases, and programs that measure with them, run by hand and not by the build;
 * how and what came out stands in docs/benchmarks.md and docs/decisions/drools-form.md.
 */
package io.faultwright.measure;

/**
 * Programs that measure, run by hand and not by the build; how and what came out stands in
 * docs/decisions/drools-form.md.
 */
package io.faultwright.measure;

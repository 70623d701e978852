/** Which further cases would show what the recorded ones do not. */
package io.faultwright.analysis.suggestion;

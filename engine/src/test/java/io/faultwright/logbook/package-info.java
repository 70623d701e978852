/** Logs read in every form, every error, and where they part, a second either side. */
package io.faultwright.logbook;

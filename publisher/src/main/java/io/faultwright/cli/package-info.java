/** The command line: the only code that touches the standard streams. */
package io.faultwright.cli;

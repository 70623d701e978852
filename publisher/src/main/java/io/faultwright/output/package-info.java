/** The only code that writes files: whole or not at all. */
package io.faultwright.output;

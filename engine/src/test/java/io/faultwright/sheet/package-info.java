/** Sheets against golden files, laws over seeded tables, and every error. */
package io.faultwright.sheet;

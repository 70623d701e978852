/** The texts that a handbook shows, and the same handbook with them in another language. */
package io.faultwright.translation;

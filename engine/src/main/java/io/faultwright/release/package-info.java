/** Sign-off: what a signature stands for, and whether it still holds. */
package io.faultwright.release;

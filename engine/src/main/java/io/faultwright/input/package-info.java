/** Cases from outside a knowledge base, as a YAML file, a table, or the findings of a check. */
package io.faultwright.input;

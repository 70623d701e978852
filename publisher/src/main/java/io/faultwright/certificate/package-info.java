/**
 * Certificates of those who passed, the register of them, and each as a badge of an open standard.
 */
package io.faultwright.certificate;

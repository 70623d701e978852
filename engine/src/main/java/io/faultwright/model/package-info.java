/**
 * The knowledge base after every reference is resolved: immutable values, maps sorted by id, the
 * place in the file kept. Nothing here can be "not yet resolved".
 */
package io.faultwright.model;

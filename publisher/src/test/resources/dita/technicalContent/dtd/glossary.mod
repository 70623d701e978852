<?xml version="1.0" encoding="UTF-8"?>
<!-- ============================================================= -->
<!--                    HEADER                                     -->
<!-- ============================================================= -->
<!--  MODULE:    DITA Glossary                                     -->
<!--  VERSION:   1.2                                               -->
<!--  DATE:      November 2009                                     -->
<!--                                                               -->
<!-- ============================================================= -->
<!--                                                               -->
<!-- ============================================================= -->
<!--                    PUBLIC DOCUMENT TYPE DEFINITION            -->
<!--                    TYPICAL INVOCATION                         -->
<!--                                                               -->
<!-- Refer to this file by the following public identifier or an   -->
<!-- appropriate system identifier                                 -->
<!-- PUBLIC "-//OASIS//ELEMENTS DITA Glossary//EN"                 -->
<!--                                                               -->
<!-- Delivered as file "glossary.mod"                              -->

<!-- NOTE: The glossary.mod file was misnamed in DITA 1.1. As of 
     DITA 1.2, this file simply redirects to the correctly-named
     file.
  -->

<!ENTITY % glossentryMod
  PUBLIC "-//OASIS//ELEMENTS DITA Glossary Entry//EN" 
         "glossentry.mod"
>%glossentryMod;

<!-- ================= End of DITA Glossary Entry ================= -->
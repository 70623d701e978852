@echo off
rem Starts Faultwright; builds it first where its sources are newer than the last build.
setlocal EnableExtensions DisableDelayedExpansion
set "FW_HOME=%~dp0"
set "FW_HOME=%FW_HOME:~0,-1%"
set "FW_JAR=%FW_HOME%\publisher\target\faultwright.jar"
set "FW_STAMP=%FW_HOME%\publisher\target\built"
set "FW_LOCK=%FW_HOME%\target\build.lock"

set "FW_JAVA="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "FW_JAVA=%JAVA_HOME%\bin\java.exe"
if not defined FW_JAVA for %%J in (java.exe) do set "FW_JAVA=%%~$PATH:J"
if not defined FW_JAVA (
  >&2 echo faultwright: Java is not installed, or not on the path
  >&2 echo   help: install a JDK 17 or newer
  exit /b 3
)

set "FW_VERSION="
for /f "tokens=3" %%V in ('""%FW_JAVA%" -version 2^>^&1 ^| findstr /i "version""') do if not defined FW_VERSION set "FW_VERSION=%%~V"
if not defined FW_VERSION set "FW_VERSION=0"
for /f "tokens=1 delims=.-+" %%M in ("%FW_VERSION%") do set "FW_MAJOR=%%M"
if %FW_MAJOR% LSS 17 (
  >&2 echo faultwright: Java "%FW_VERSION%" is too old
  >&2 echo   help: install a JDK 17 or newer, or let JAVA_HOME point to one
  exit /b 3
)

set "FW_FLAGS=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xmn200m -Xshare:auto -Xlog:disable -Xlog:all=error:stderr"
set "FW_ARCHIVE=%FW_HOME%\publisher\target\classes-%FW_VERSION%.jsa"

call :fresh && if exist "%FW_ARCHIVE%" goto start
call :prepare
if errorlevel 1 exit /b 3

:start
for /f "tokens=2 delims=:." %%C in ('chcp') do set "FW_PAGE=%%C"
chcp 65001 >nul
"%FW_JAVA%" %FW_FLAGS% "-XX:SharedArchiveFile=%FW_ARCHIVE%" -jar "%FW_JAR%" %*
set "FW_RESULT=%ERRORLEVEL%"
chcp %FW_PAGE% >nul
exit /b %FW_RESULT%

:fresh
if not exist "%FW_JAR%" exit /b 1
if not exist "%FW_STAMP%" exit /b 1
if not exist "%FW_HOME%\engine\src\main" exit /b 0
powershell -NoProfile -NonInteractive -Command "$t = (Get-Item -LiteralPath $env:FW_STAMP).LastWriteTimeUtc; $n = 'pom.xml', 'engine\pom.xml', 'publisher\pom.xml', 'engine\src\main', 'publisher\src\main' | ForEach-Object { Get-ChildItem -Recurse -LiteralPath (Join-Path $env:FW_HOME $_) } | Where-Object { $_.LastWriteTimeUtc -gt $t } | Select-Object -First 1; if ($n) { exit 1 }"
exit /b %ERRORLEVEL%

rem One build at a time: making a folder succeeds for one process only.
:prepare
if not exist "%FW_HOME%\target" mkdir "%FW_HOME%\target" 2>nul
set /a FW_WAITED=0
:wait
mkdir "%FW_LOCK%" 2>nul && goto locked
set /a FW_WAITED+=1
if %FW_WAITED% GTR 900 goto stuck
ping -n 2 127.0.0.1 >nul
goto wait
:stuck
>&2 echo faultwright: another build has not ended for 15 minutes
>&2 echo   help: if none is running, delete the folder "%FW_LOCK%"
exit /b 1
:locked
call :fresh
if errorlevel 1 call :build
if errorlevel 1 (
  rmdir "%FW_LOCK%" 2>nul
  exit /b 1
)
if not exist "%FW_ARCHIVE%" call :archive
rmdir "%FW_LOCK%" 2>nul
exit /b 0

:build
where mvn >nul 2>nul
if errorlevel 1 (
  >&2 echo faultwright: it is not built yet, and `mvn` is not there to build it
  >&2 echo   help: install Maven 3.8 or newer and put it on the path
  exit /b 1
)
>&2 echo Building Faultwright once...
if not exist "%FW_HOME%\publisher\target" mkdir "%FW_HOME%\publisher\target"
type nul > "%FW_STAMP%.next"
pushd "%FW_HOME%"
call mvn -q -B -ntp -Dmaven.test.skip=true -Dstyle.color=never package 1>&2 <nul
set "FW_RESULT=%ERRORLEVEL%"
popd
if not "%FW_RESULT%"=="0" (
  >&2 echo faultwright: the build failed; what Maven says stands above
  exit /b 1
)
del /q "%FW_HOME%\publisher\target\*.jsa" 2>nul
move /y "%FW_STAMP%.next" "%FW_STAMP%" >nul
exit /b 0

:archive
if not exist "%FW_HOME%\rules\walk-in-freezers" exit /b 0
"%FW_JAVA%" %FW_FLAGS% "-XX:ArchiveClassesAtExit=%FW_ARCHIVE%" -jar "%FW_JAR%" check "%FW_HOME%\rules\walk-in-freezers" >nul 2>nul <nul
if not exist "%FW_ARCHIVE%" type nul > "%FW_ARCHIVE%"
exit /b 0

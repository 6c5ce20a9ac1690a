@echo off
rem Starts gelfront and builds it first where that is needed. See README.md.
rem After an update of the sources delete the "target" folders: this file only looks for missing builds.
setlocal
set "HERE=%~dp0"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" --version >nul 2>&1
if errorlevel 1 (
  echo gelfront: Java is not installed or older than version 17: install a JDK, version 17 or newer 1>&2
  exit /b 1
)
set "MAJOR="
for /f "tokens=2 delims=. " %%v in ('""%JAVA%" --version"') do if not defined MAJOR set "MAJOR=%%v"
if %MAJOR% LSS 17 (
  echo gelfront: needs Java 17 or newer, found version %MAJOR% 1>&2
  exit /b 1
)
rem Java's compiler bets on how often loops have run so far, and throws code away when the next
rem case's loops run otherwise: without that bet a study takes a tenth less.
set "STEADY=-XX:+IgnoreUnrecognizedVMOptions -XX:-UseProfiledLoopPredicate"
if /i "%~1"=="view" goto view

set "JAR=%HERE%simulator\target\simulator-0.1.0-SNAPSHOT.jar"
if exist "%JAR%" goto words
call :build simulator
if errorlevel 1 exit /b 1
:words
"%JAVA%" -Xmx1g %STEADY% -Djava.awt.headless=true -Djdk.console=java.base %GELFRONT_JAVA_OPTS% -cp "%JAR%;%HERE%simulator\target\lib\*" gelfront.cli.Main %*
exit /b %ERRORLEVEL%

:view
set "JAR=%HERE%viewer\target\viewer-0.1.0-SNAPSHOT.jar"
if exist "%JAR%" goto window
call :build viewer
if errorlevel 1 exit /b 1
:window
"%JAVA%" -Xmx2g %STEADY% %GELFRONT_JAVA_OPTS% -cp "%JAR%;%HERE%viewer\target\lib\*" gelfront.viewer.ViewerApp %2 %3 %4 %5 %6 %7 %8 %9
exit /b %ERRORLEVEL%

:build
echo building once, a minute or two... 1>&2
pushd "%HERE%"
call mvnw.cmd -B -q -DskipTests -Dspotless.check.skip=true -pl %1 -am package 1>&2
set "BUILT=%ERRORLEVEL%"
popd
if not "%BUILT%"=="0" echo gelfront: could not be built; the reason stands above 1>&2
exit /b %BUILT%

@echo off
rem Starts gelfront from its own folder: the window without a word, else the command line.
setlocal
set "HERE=%~dp0"
set "BIN="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "BIN=%JAVA_HOME%\bin\"
"%BIN%java" --version >nul 2>&1
if errorlevel 1 goto nojava
set "MAJOR="
for /f "tokens=2 delims=. " %%v in ('""%BIN%java" --version"') do if not defined MAJOR set "MAJOR=%%v"
if %MAJOR% LSS 17 goto nojava
rem Java's compiler bets on how often loops have run so far, and throws code away when the next
rem case's loops run otherwise: without that bet a study takes a tenth less.
set "STEADY=-XX:+IgnoreUnrecognizedVMOptions -XX:-UseProfiledLoopPredicate"
if "%~1"=="" goto window
if /i "%~1"=="view" goto view
"%BIN%java" -Xmx1g %STEADY% -Djava.awt.headless=true -Djdk.console=java.base %GELFRONT_JAVA_OPTS% -cp "%HERE%lib\*" gelfront.cli.Main %*
exit /b %ERRORLEVEL%

:window
start "" "%BIN%javaw" -Xmx2g %STEADY% %GELFRONT_JAVA_OPTS% -cp "%HERE%lib\*" gelfront.viewer.ViewerApp
exit /b 0

:view
"%BIN%java" -Xmx2g %STEADY% %GELFRONT_JAVA_OPTS% -cp "%HERE%lib\*" gelfront.viewer.ViewerApp %2 %3 %4 %5 %6 %7 %8 %9
exit /b %ERRORLEVEL%

rem A double click's own console would close before anyone could read that.
:nojava
echo gelfront: Java is not installed or older than version 17: install version 17 or newer 1>&2
if "%~1"=="" pause
exit /b 1

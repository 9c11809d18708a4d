@echo off
rem Runs midlateral on Windows with the Java of JAVA_HOME, or else of the path; 17 or later.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
where "%JAVA%" >nul 2>nul || if not exist "%JAVA%.exe" (
  echo midlateral: Java 17 or later is needed; JAVA_HOME or the path must lead to it 1>&2
  exit /b 4
)
set "MODE=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto"
if "%~1"=="batch" set "MODE=-XX:+UseParallelGC"
"%JAVA%" %MODE% -Dfile.encoding=UTF-8 -jar "%~dp0..\lib\midlateral.jar" %*
exit /b %ERRORLEVEL%

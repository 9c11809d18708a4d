@echo off
rem Runs midlateral on Windows with the Java of JAVA_HOME, or else of the path; 17 or later.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
where "%JAVA%" >nul 2>nul || if not exist "%JAVA%.exe" (
  echo midlateral: Java 17 or later is needed; JAVA_HOME or the path must lead to it 1>&2
  exit /b 4
)
set "VERSION="
for /f "tokens=3" %%v in ('""%JAVA%" -version 2^>^&1 ^| findstr /c:" version ""') do set "VERSION=%%~v"
set "MAJOR="
for /f "tokens=1,2 delims=.-+" %%a in ("%VERSION%") do if "%%a"=="1" (set "MAJOR=%%b") else (set "MAJOR=%%a")
if defined MAJOR if %MAJOR% LSS 17 (
  echo midlateral: Java 17 or later is needed; %JAVA% is %VERSION% 1>&2
  exit /b 4
)
set "MODE=-XX:TieredStopAtLevel=1 -XX:Tier3MinInvocationThreshold=5 -XX:Tier3CompileThreshold=1000 -XX:+UseSerialGC -Xshare:auto"
if "%~1"=="batch" set "MODE=-XX:+UseParallelGC"
"%JAVA%" %MODE% -Dfile.encoding=UTF-8 -jar "%~dp0..\lib\midlateral.jar" %*
exit /b %ERRORLEVEL%

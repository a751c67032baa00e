<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <source>A cause is a suspicion until the measurement that would confirm it has been made. It changes no verdict.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of the article.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading is no finite number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A switched shunt moves the reading of a live channel. Take control and safety channels out of service first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About this report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Act</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All steps are within their limits all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All steps together, if nothing moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All steps together, if nothing moved: p = {1}; from 0.05 on no single step counts as changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All {1} checks lie within the control limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An input that hangs in the air shows anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approximate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approximation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Article</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BIC behind best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bessel of order {1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beyond limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both checks fail: see each of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both checks were judged by the same set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bridge of channel {1} with its leads and shunts, all shunts open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Butterworth of order {1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be compared: no step was read in both checks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be compared: the bridges differ, {1} and {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be compared: the channel has no steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be compared: the margin of a change is no number of 0 or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be compared: the readings are in different units, {1} and {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot be predicted: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: it moved by {1}, but all steps together are as if nothing had changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: its uncertainty is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: not everything can be compared. What can is unchanged: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: step {4} differs by {2}, which neither is within {3} nor differs from nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: steps {4} neither are within their margins nor differ from nothing, most of all step {1}: {2} beside {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: the gain differs by {1}, which neither is within {2} nor differs from nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: the zero differs by {1}, which neither is within {2} nor differs from nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: too few steps can be compared for a gain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: {1} neither is within {2} nor differs from nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change from zero in {1} and {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change it to constant voltage first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change of gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change of zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed by {1} (gain), where {2} would count as unchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed, but by less than the margin of {1}: {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed: step {1} moved by {2}, where {3} would count as unchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed: steps {4} moved, most of all step {1} by {2}, where {3} would count as unchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed: the zero moved by {1}, where {2} would count as unchanged. Find out why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel {1} is not connected as its template says. {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channels left out: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channels: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a list of channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close its checks first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control limits take three checks with a gain or a zero reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control limits take three checks with a line; there are {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Data taken in between: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decision rule: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decisions stay with the responsible licensed or authorised person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnosis: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not correct test data by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E_n of the change of gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier checks are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a number above zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a share from 0 to 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the length of one wire, one way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the resistance of one wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything, for the archive and for whoever signs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exact and approximate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Explains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Explains, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures of each check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures of the line and zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fingerprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fingerprint of the document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {1} checks the limits are known to about {2} % only; 20 make them reliable.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gain and steps are unchanged: gain {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gain and zero of every check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give both, or the resistance of a lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the cause is: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be predicted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known are {n}, {name}, {group} and {column}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave one of them empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out of this report: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less likely: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured change against simulated value, and deviation from expected with the limits as a band, check {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved by {1}, not within {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved by {1}, within {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved: by how much the deviation from expected changed. U at a coverage of {1}, without what both checks share. Unchanged: p beyond margin is below 0.05; changed: p of nothing moved is below 0.05, and that beyond margin is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name a channel that was there before the list, or empty the cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name it, such as kN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name the channel, or empty the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No channel has been checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No channel is in this report.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check has a line, so there is no trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No diagnosis: it takes three readings at least, of steps whose uncertainty is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number of repeats would tell: what repeating does not average is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pins are entered: shunts are switched inside the instrument, or wired as the drawing shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading has an uncertainty, and there are too few for their scatter about a line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading has an uncertainty: their scatter about the lines of both checks is taken, {1} with {2} degrees of freedom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading in {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No step closes a shunt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No visible change of the readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not connected as the template says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not connected as the template says, and predicted and judged so: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not traceable: no instrument is named for these channels: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not traceable: no resistor of the stock is named for these shunts: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is said about the zero: it was not read in both checks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of the record is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of check {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins and jumpers have no fault.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins with the jumpers of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan and wiring, to be taken to the article before the check.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Possible causes are looked for in checks that do not pass, and in those whose readings are off their line by more than their uncertainties explain (probability below 5 %). The others were not diagnosed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Possible causes, the likeliest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pre-test against post-test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prepared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a cell that holds the separator in quotation marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put something else into the pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {n} into the pattern, or begin with another number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings depend on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recording</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recording SHA-256</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks on {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeats of both checks that would tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reviewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reviewer&apos;s summary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save its sheet as CSV and choose that file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the file as CSV in UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say which column it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say which of them is ignored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Self-heating: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set its least limit to zero first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shunt calibration report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So does the zero: {1} beside {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the list over several documents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Status</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Status: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} cannot be decided. {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} cannot be predicted: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} fails. {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} is compared with step {2} of {3}, which closes the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} is not compared: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} moved by {2}, where {3} would count as unchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1} of {2} has nothing to be compared with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1}, note: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {1}. {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {4} is open as well: {2} beside {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps {1} are not compared: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps {1} of {2} have nothing to be compared with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps {1}, all {3} ones among them, are not compared: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps {4} are open as well, most of all step {1}: {2} beside {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps {4} moved, most of all step {1} by {2}, where {3} would count as unchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strain data</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Such a fault is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Summary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the excitation off before wiring a shunt or measuring with an ohmmeter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the excitation off before wiring or ohmmeter work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the pin out first, or start from another channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the shunt out first, or start from another channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test data may be corrected by it once it is confirmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is far beyond what an instrument for strain gauges takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The channel has no shunts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The channel has no steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The channel has not been checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The document has no channels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The document holds no history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first {1} cannot be told apart by the readings of this plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gain is unchanged: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gain left its control limits: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sequence of {1} has no such step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The set-ups differ. {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The structure is connected to nothing else, so no current leaks to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The zero left its control limits: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The zero moved by {1}, where {2} would count as unchanged: find out why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The zero reading that others are counted from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To confirm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To tell them apart, one more step: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traceability</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainties marked as assumed are usual tolerances of such parts, not those of your own. State the figures of your certificates and data sheets before you rely on an uncertainty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unchanged within {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unchanged within {1}: {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a calibrated load or a traceable calibration where a standard, a contract or local rules ask for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdicts cover the electrical chain only: leads, arms, excitation, amplifier and scaling. They say nothing about gauge factor, gauge bond or alignment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What changed: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What differs in the set-ups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What moved between the last two checks, and what that means for the data in between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found, worst first, without plan and budget.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who saved what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst deviation, % of limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write as in name=Channel; fields are {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it on one line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write µm/m, mV/V or mV, or copy a channel that reads in that unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero return, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wire needs both its length and its cross-section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {1} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another content</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the earlier set-up has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the later set-up has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the template says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backing and cooling of a gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance network</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance potentiometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance wiper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bridge factor set on the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bridge template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration due {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration of the instrument due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot tell: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed since the check before: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed within margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed within the margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>charts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check {1} has no reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed: kept with the check, the same as that of the channel now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed: kept with the check; that of the channel was changed since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comparison of checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>constant current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected = {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected = {1} × {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correlation of group {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coverage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diagnosis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>divides by the measured excitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end {1} of resistor {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>excitation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>excitation sensed at the bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>explains {1} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failing: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>far-fetched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figures of merit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gain and zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gain {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge factor as set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge factor set on the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greatest share of U in the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grid of a gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>guard band in units of U</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the bridge is connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ignored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in another order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infinite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>input resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it has no check {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it has no {1} for pin {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it has no {1} for shunt {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it has readings in {1} in an open check, and would read in {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is below zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is fed with a constant current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is longer than {1} characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is taken for the {1}, and so is {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its least limit would be {1} {2} where {3} was meant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name would be empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name would be {1}, which another channel has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jumpers of shunt {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lead cross-section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lead length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lead resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lead {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leads warmer than stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit of a deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit of zero return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>linearisation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mains hum averaged out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin of a change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin of a change of zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin of change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin of the zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moving average over {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no column is the name of the channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: fewer than three checks with a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: readings typed or pasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nonlinearity measured from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not checked: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing to change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the day of printing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open remarks: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open: the set-up of the channel as it is now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordinary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p, beyond margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p, nothing moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passing: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place of shunt {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>probability of conformity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rated output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recording column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>returned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>schematics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial number of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shunt {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps at most {1} at step {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>structure connected to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>submitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>summary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature coefficient of the gauge factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature of the gauges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature that the gauge factor is stated for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the document would have {1} channels, and it can hold {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the latest of each channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the resistance and the size of the wire are both given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scaled unit has no name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text ends within a character</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text is neither UTF-8 nor Windows-1252</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are {1} cells under {2} headings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is a line break in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no channel {1} in the document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no column {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this content</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a workbook and no list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>traceability</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trend over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>u of gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>u of zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainty budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainty of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncommon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit of readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zero {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} % of what is off; such a fault is {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} (margin {2}): {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} (step {2})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} ({2} of {3} copper at {4})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} and {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} and {2} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} cannot tell by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} closes other shunts there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} has no zero reading to count from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} into {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is no field with its column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is no limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is no template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is no unit that it can read in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is not above zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} is {2} now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} means nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} of {2}: chosen by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} of {2}: those that do not pass or have changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} per mV/V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} repeats of both checks would tell, if the differences stay what they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1} to {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, check {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, column {2}, {3} bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, from {2} to {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, trend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, working of step {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}, {2} and {3} compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: removed with its check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: removed with its {2} checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: there is a channel {2} already, named {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: {2} before, {3} after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}: {2}: {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}; cannot tell whether it changed since {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}; changed since {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}; changed within the margin since {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{1}; unchanged since {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ui</name>
    <message>
        <source>  ✓ right</source>
        <translation>  ✓ richtig</translation>
    </message>
    <message>
        <source>  ✗ wrong</source>
        <translation>  ✗ falsch</translation>
    </message>
    <message>
        <source> (closed)</source>
        <translation> (geschlossen)</translation>
    </message>
    <message>
        <source> (left out)</source>
        <translation> (weggelassen)</translation>
    </message>
    <message>
        <source> (open)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> V</source>
        <translation> V</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source> at this step</source>
        <translation> bei dieser Stufe</translation>
    </message>
    <message>
        <source> carries </source>
        <translation> führt </translation>
    </message>
    <message>
        <source> closed</source>
        <translation> geschlossen</translation>
    </message>
    <message>
        <source> constant current</source>
        <translation> Konstantstrom</translation>
    </message>
    <message>
        <source> from </source>
        <translation> von </translation>
    </message>
    <message>
        <source> from the structure</source>
        <translation> aus der Struktur</translation>
    </message>
    <message>
        <source> gauge</source>
        <translation> DMS</translation>
    </message>
    <message>
        <source> lost </source>
        <translation> verlieren </translation>
    </message>
    <message>
        <source> mA</source>
        <translation> mA</translation>
    </message>
    <message>
        <source> mV/V</source>
        <translation> mV/V</translation>
    </message>
    <message>
        <source> nA</source>
        <translation> nA</translation>
    </message>
    <message>
        <source> r: correlation of two inputs.</source>
        <translation> r: Korrelation zweier Eingangsgrößen.</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source> to </source>
        <translation> nach </translation>
    </message>
    <message>
        <source> to the structure</source>
        <translation> zur Struktur</translation>
    </message>
    <message>
        <source> µA</source>
        <translation> µA</translation>
    </message>
    <message>
        <source> · repeated</source>
        <translation> · wiederholt</translation>
    </message>
    <message>
        <source> · seed %1</source>
        <translation> · Startzahl %1</translation>
    </message>
    <message>
        <source>&quot;Close check&quot; above the sequence keeps the set-up that this check is judged by, so that later edits never change its verdict. A shunt check says nothing about gauge factor, bond or alignment.</source>
        <translation>„Prüfung abschließen“ über dem Ablauf hält die Einrichtung fest, nach der diese Prüfung beurteilt wird, sodass spätere Änderungen ihr Urteil nie verändern. Eine Shuntprüfung sagt nichts über k-Faktor, Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>#</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>% of expected reading</source>
        <translation>% des erwarteten Messwerts</translation>
    </message>
    <message>
        <source>% of expected span</source>
        <translation>% der erwarteten Spanne</translation>
    </message>
    <message>
        <source>% of reading</source>
        <translation>% des Messwerts</translation>
    </message>
    <message>
        <source>% of span</source>
        <translation>% der Spanne</translation>
    </message>
    <message>
        <source>%1
File not found.
Please verify the correct file name was given.</source>
        <translation>%1
Datei nicht gefunden.
Bitte den Dateinamen prüfen.</translation>
    </message>
    <message>
        <source>%1  (no reading)</source>
        <translation>%1  (kein Messwert)</translation>
    </message>
    <message>
        <source>%1 % of the strain, and %2 %3 besides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 per %3</source>
        <translation>%1 %2 je %3</translation>
    </message>
    <message>
        <source>%1 %2 – %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 readings)</source>
        <translation>%1 (%2 Messwerte)</translation>
    </message>
    <message>
        <source>%1 (1 reading)</source>
        <translation>%1 (1 Messwert)</translation>
    </message>
    <message>
        <source>%1 (overdue)</source>
        <translation>%1 (überfällig)</translation>
    </message>
    <message>
        <source>%1 (time)</source>
        <translation>%1 (Zeit)</translation>
    </message>
    <message>
        <source>%1 GiB</source>
        <translation>%1 GiB</translation>
    </message>
    <message>
        <source>%1 KiB</source>
        <translation>%1 KiB</translation>
    </message>
    <message>
        <source>%1 MiB</source>
        <translation>%1 MiB</translation>
    </message>
    <message>
        <source>%1 already exists.
Do you want to replace it?</source>
        <translation>%1 ist schon vorhanden.
Soll die Datei ersetzt werden?</translation>
    </message>
    <message>
        <source>%1 already has a check called %2: the checks will be called %3.</source>
        <translation>%1 hat schon eine Prüfung namens %2: Die Prüfungen werden %3 heißen.</translation>
    </message>
    <message>
        <source>%1 already have a check called %2: the checks will be called %3.</source>
        <translation>%1 haben schon eine Prüfung namens %2: Die Prüfungen werden %3 heißen.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 are left alone.</source>
        <translation>%1 bleiben unverändert.</translation>
    </message>
    <message>
        <source>%1 as guessed</source>
        <translation>%1 wie erkannt</translation>
    </message>
    <message>
        <source>%1 being worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 Bytes</translation>
    </message>
    <message>
        <source>%1 cannot be looked at: it is gone, or it may not be read. Watching goes on for when it comes back.</source>
        <translation>%1 ist nicht einzusehen: verschwunden oder nicht lesbar. Es wird weiter gewartet, bis es wieder da ist.</translation>
    </message>
    <message>
        <source>%1 cannot tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 change.</source>
        <translation>%1 ändern sich.</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 channels</source>
        <translation>%1 Kanäle</translation>
    </message>
    <message>
        <source>%1 channels are added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 channels change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>%1 entered</source>
        <translation>%1 eingetragen</translation>
    </message>
    <message>
        <source>%1 errors</source>
        <translation>%1 Fehler</translation>
    </message>
    <message>
        <source>%1 fail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 faults</source>
        <translation>%1 Fehler</translation>
    </message>
    <message>
        <source>%1 faults explain every reading: more readings tell them apart.</source>
        <translation>%1 Fehler erklären alle Messwerte: Weitere Messwerte unterscheiden sie.</translation>
    </message>
    <message>
        <source>%1 faults of this plan are known</source>
        <translation>%1 Fehler dieses Plans sind bekannt</translation>
    </message>
    <message>
        <source>%1 from node</source>
        <translation>%1 Knoten von</translation>
    </message>
    <message>
        <source>%1 has %2 bytes now and had %3 when the readings were taken from it.</source>
        <translation>%1 hat jetzt %2 Bytes und hatte %3, als die Messwerte daraus übernommen wurden.</translation>
    </message>
    <message>
        <source>%1 has %2 steps.</source>
        <translation>%1 hat %2 Stufen.</translation>
    </message>
    <message>
        <source>%1 has no steps yet: lay out its sequence first.</source>
        <translation>%1 hat noch keine Stufen: zuerst den Ablauf anlegen.</translation>
    </message>
    <message>
        <source>%1 in %2 channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is left out: %2</source>
        <translation>%1 ist ausgenommen: %2</translation>
    </message>
    <message>
        <source>%1 is no longer on the disk. What is shown was read before.</source>
        <translation>%1 ist nicht mehr auf dem Datenträger. Gezeigt wird, was vorher gelesen wurde.</translation>
    </message>
    <message>
        <source>%1 is not in the list of pins</source>
        <translation>%1 steht nicht in der Liste der Stifte</translation>
    </message>
    <message>
        <source>%1 is overdue: its calibration was due on %2.</source>
        <translation>%1 ist überfällig: Die Kalibrierung war am %2 fällig.</translation>
    </message>
    <message>
        <source>%1 is there already. Write the answers over it?</source>
        <translation>%1 ist schon vorhanden. Mit den Lösungen überschreiben?</translation>
    </message>
    <message>
        <source>%1 is unused</source>
        <translation>%1 ist unbenutzt</translation>
    </message>
    <message>
        <source>%1 is watched now, and %2 no longer.</source>
        <translation>Jetzt wird %1 beobachtet, nicht mehr %2.</translation>
    </message>
    <message>
        <source>%1 leads to %2</source>
        <translation>%1 führt zu %2</translation>
    </message>
    <message>
        <source>%1 leaks</source>
        <translation>%1 Nebenschlüsse</translation>
    </message>
    <message>
        <source>%1 left alone. %2.</source>
        <translation>%1 unverändert gelassen. %2.</translation>
    </message>
    <message>
        <source>%1 levels, which do not fit the plan</source>
        <translation>%1 Plateaus, die nicht zum Plan passen</translation>
    </message>
    <message>
        <source>%1 not checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 judged</source>
        <translation>%1 von %2 beurteilt</translation>
    </message>
    <message>
        <source>%1 of %2 readings are in the document; save it. </source>
        <translation>%1 von %2 Messwerten stehen im Dokument; jetzt speichern. </translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 von %2 richtig</translation>
    </message>
    <message>
        <source>%1 of %2 shunts cannot be laid. %3</source>
        <translation>%1 von %2 Shunts lassen sich nicht stecken. %3</translation>
    </message>
    <message>
        <source>%1 of %2 steps</source>
        <translation>%1 von %2 Stufen</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>%1 pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 readings</source>
        <translation>%1 Messwerte</translation>
    </message>
    <message>
        <source>%1 readings of open checks are dropped.</source>
        <translation>%1 Messwerte offener Prüfungen entfallen.</translation>
    </message>
    <message>
        <source>%1 readings: mean %2, standard uncertainty of the mean %3 %4</source>
        <translation>%1 Messwerte: Mittelwert %2, Standardunsicherheit des Mittelwerts %3 %4</translation>
    </message>
    <message>
        <source>%1 refuse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rows are refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 runs of the sequence</source>
        <translation>%1 Durchläufe des Ablaufs</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 s to %2 s</source>
        <translation>%1 s bis %2 s</translation>
    </message>
    <message>
        <source>%1 shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 shunts</source>
        <translation>%1 Shunts</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>bisher %1</translation>
    </message>
    <message>
        <source>%1 spans of no step</source>
        <translation>%1 Abschnitte ohne Stufe</translation>
    </message>
    <message>
        <source>%1 spans of steps</source>
        <translation>%1 Abschnitte von Stufen</translation>
    </message>
    <message>
        <source>%1 stay as they are.</source>
        <translation>%1 bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>%1 steps</source>
        <translation>%1 Stufen</translation>
    </message>
    <message>
        <source>%1 steps, %2 in all</source>
        <translation>%1 Stufen, insgesamt %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3, %4 samples</source>
        <translation>%1 bis %2 %3, %4 Abtastwerte</translation>
    </message>
    <message>
        <source>%1 to look at again.</source>
        <translation>%1 nochmals anzusehen.</translation>
    </message>
    <message>
        <source>%1 to node</source>
        <translation>%1 Knoten nach</translation>
    </message>
    <message>
        <source>%1 to tick before the run begins.</source>
        <translation>%1 vor Beginn des Durchgangs abzuhaken.</translation>
    </message>
    <message>
        <source>%1 typed in the table</source>
        <translation>%1, in die Tabelle eingetippt</translation>
    </message>
    <message>
        <source>%1 warnings</source>
        <translation>%1 Warnungen</translation>
    </message>
    <message>
        <source>%1 was changed on the disk after it was read. What is shown is what was read then.</source>
        <translation>%1 wurde nach dem Lesen auf dem Datenträger geändert. Gezeigt wird, was damals gelesen wurde.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>%1 with open remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · seed %2.</source>
        <translation>%1 · Startzahl %2.</translation>
    </message>
    <message>
        <source>%1,  %2 to %3</source>
        <translation>%1,  %2 bis %3</translation>
    </message>
    <message>
        <source>%1, %2, step %3</source>
        <translation>%1, %2, Stufe %3</translation>
    </message>
    <message>
        <source>%1, %2: %3 steps</source>
        <translation>%1, %2: %3 Stufen</translation>
    </message>
    <message>
        <source>%1, beyond the axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, closed switch</source>
        <translation>%1, geschlossener Schalter</translation>
    </message>
    <message>
        <source>%1, not as in stock</source>
        <translation>%1, anders als im Bestand</translation>
    </message>
    <message>
        <source>%1, not settled to two digits</source>
        <translation>%1, nicht auf zwei Stellen beruhigt</translation>
    </message>
    <message>
        <source>%1, settled to two digits</source>
        <translation>%1, auf zwei Stellen beruhigt</translation>
    </message>
    <message>
        <source>%1, step %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, tied</source>
        <translation>%1, gleichauf</translation>
    </message>
    <message>
        <source>%1, what if</source>
        <translation>%1, Was wäre, wenn</translation>
    </message>
    <message>
        <source>%1, wires</source>
        <translation>%1, Leitungen</translation>
    </message>
    <message>
        <source>%1, within %2 %</source>
        <translation>%1, auf %2 % genau</translation>
    </message>
    <message>
        <source>%1. Fits best: %2.</source>
        <translation>%1. Am besten passt: %2.</translation>
    </message>
    <message>
        <source>%1. No single fault explains them all</source>
        <translation>%1. Kein einzelner Fehler erklärt alle</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2.
%3.</source>
        <translation>%1: %2.
%3.</translation>
    </message>
    <message>
        <source>%1: U = %2 %3 with k = %4 for %5; %6.</source>
        <translation>%1: U = %2 %3 mit k = %4 für %5; %6.</translation>
    </message>
    <message>
        <source>%1: best set %2 of %3 right, seed %4.</source>
        <translation>%1: beste Reihe %2 von %3 richtig, Startzahl %4.</translation>
    </message>
    <message>
        <source>%1: box up to %2</source>
        <translation>%1: Dekade bis %2</translation>
    </message>
    <message>
        <source>%1: its contents are not those that the readings were taken from (SHA-256 differs).</source>
        <translation>%1: Der Inhalt ist nicht der, aus dem die Messwerte stammen (SHA-256 weicht ab).</translation>
    </message>
    <message>
        <source>%1: measure again, and look for two faults.</source>
        <translation>%1: nochmals messen und nach zwei Fehlern suchen.</translation>
    </message>
    <message>
        <source>%1: no step</source>
        <translation>%1: keine Stufe</translation>
    </message>
    <message>
        <source>%1: standard uncertainty %2.</source>
        <translation>%1: Standardunsicherheit %2.</translation>
    </message>
    <message>
        <source>%1: step %2</source>
        <translation>%1: Stufe %2</translation>
    </message>
    <message>
        <source>%1; budget %2</source>
        <translation>%1; Budget %2</translation>
    </message>
    <message>
        <source>%1; nearest comes: %2.</source>
        <translation>%1; am nächsten kommt: %2.</translation>
    </message>
    <message>
        <source>%1; the first %2 of %3 points</source>
        <translation>%1; die ersten %2 von %3 Punkten</translation>
    </message>
    <message>
        <source>&amp;About Shuntwright</source>
        <translation>Ü&amp;ber Shuntwright</translation>
    </message>
    <message>
        <source>&amp;Accept…</source>
        <translation>&amp;Freigeben…</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Add channel</source>
        <translation>Kanal &amp;anlegen</translation>
    </message>
    <message>
        <source>&amp;All views</source>
        <translation>&amp;Alle Ansichten</translation>
    </message>
    <message>
        <source>&amp;Another seed</source>
        <translation>&amp;Andere Startzahl</translation>
    </message>
    <message>
        <source>&amp;Another set</source>
        <translation>&amp;Neue Aufgaben</translation>
    </message>
    <message>
        <source>&amp;Answer</source>
        <translation>&amp;Antworten</translation>
    </message>
    <message>
        <source>&amp;Answers…</source>
        <translation>&amp;Lösungen…</translation>
    </message>
    <message>
        <source>&amp;Apply to channels…</source>
        <translation>Auf Kanäle &amp;anwenden…</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Back to the steps</source>
        <translation>&amp;Zurück zu den Stufen</translation>
    </message>
    <message>
        <source>&amp;Begin</source>
        <translation>&amp;Beginnen</translation>
    </message>
    <message>
        <source>&amp;Both, in two files…</source>
        <translation>&amp;Beides, in zwei Dateien…</translation>
    </message>
    <message>
        <source>&amp;Bridge</source>
        <translation>B&amp;rücke</translation>
    </message>
    <message>
        <source>&amp;Cancel search</source>
        <translation>Suche a&amp;bbrechen</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Sicherheitshinweise</translation>
    </message>
    <message>
        <source>&amp;Channel</source>
        <translation>&amp;Kanal</translation>
    </message>
    <message>
        <source>&amp;Choose</source>
        <translation>&amp;Wählen</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Close or reopen check</source>
        <translation>Prüfung ab&amp;schließen oder öffnen</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy as picture</source>
        <translation>Als Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Copy cells</source>
        <translation>Zellen &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Dark colours</source>
        <translation>Dunk&amp;le Farben</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>&amp;Details of the check…</source>
        <translation>An&amp;gaben zur Prüfung…</translation>
    </message>
    <message>
        <source>&amp;Details of the document…</source>
        <translation>&amp;Angaben zum Dokument…</translation>
    </message>
    <message>
        <source>&amp;Drawing</source>
        <translation>&amp;Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Duplicate channel</source>
        <translation>Kanal &amp;verdoppeln</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Edit the value</source>
        <translation>Wert b&amp;earbeiten</translation>
    </message>
    <message>
        <source>&amp;Export picture of the outcome…</source>
        <translation>Bild des Ergebnisses e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Export picture…</source>
        <translation>Bild e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Fit</source>
        <translation>&amp;Einpassen</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Go on with the run</source>
        <translation>Durchgang &amp;fortsetzen</translation>
    </message>
    <message>
        <source>&amp;Guided run</source>
        <translation>&amp;Geführter Durchgang</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;IEC 60617: rectangles</source>
        <translation>&amp;IEC 60617: Rechtecke</translation>
    </message>
    <message>
        <source>&amp;Import a channel list…</source>
        <translation>Kanalliste e&amp;inlesen…</translation>
    </message>
    <message>
        <source>&amp;Keys of the recording strip</source>
        <translation>&amp;Tasten des Aufzeichnungsstreifens</translation>
    </message>
    <message>
        <source>&amp;Leave it for now</source>
        <translation>&amp;Jetzt nicht</translation>
    </message>
    <message>
        <source>&amp;Leave the run</source>
        <translation>Durchgang &amp;verlassen</translation>
    </message>
    <message>
        <source>&amp;Light colours</source>
        <translation>&amp;Helle Farben</translation>
    </message>
    <message>
        <source>&amp;Look at it again</source>
        <translation>&amp;Nochmals ansehen</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;New Folder</source>
        <translation>&amp;Neuer Ordner</translation>
    </message>
    <message>
        <source>&amp;New check</source>
        <translation>&amp;Neue Prüfung</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Next, without a reading</source>
        <translation>&amp;Weiter ohne Messwert</translation>
    </message>
    <message>
        <source>&amp;No</source>
        <translation>&amp;Nein</translation>
    </message>
    <message>
        <source>&amp;Not shown</source>
        <translation>&amp;Nicht gezeigt</translation>
    </message>
    <message>
        <source>&amp;OK</source>
        <translation>&amp;OK</translation>
    </message>
    <message>
        <source>&amp;Ohmmeter</source>
        <translation>&amp;Ohmmeter</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Overview of all channels</source>
        <translation>Ü&amp;bersicht aller Kanäle</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>&amp;Paste cells</source>
        <translation>Zellen &amp;einfügen</translation>
    </message>
    <message>
        <source>&amp;Polarity map</source>
        <translation>&amp;Polaritätskarte</translation>
    </message>
    <message>
        <source>&amp;Practice</source>
        <translation>Ü&amp;ben</translation>
    </message>
    <message>
        <source>&amp;Prepare</source>
        <translation>&amp;Vorbereiten</translation>
    </message>
    <message>
        <source>&amp;Print</source>
        <translation>&amp;Drucken</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Questions</source>
        <translation>&amp;Aufgaben</translation>
    </message>
    <message>
        <source>&amp;Questions…</source>
        <translation>&amp;Aufgaben…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Read it as</source>
        <translation>&amp;Lesen als</translation>
    </message>
    <message>
        <source>&amp;Record</source>
        <translation>Pr&amp;otokoll</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Redo this step</source>
        <translation>Stufe &amp;wiederholen</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederherstellen: %1</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>&amp;Remove channel</source>
        <translation>Kanal &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Remove step</source>
        <translation>Stufe &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Rename</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>&amp;Repeat the wrong ones</source>
        <translation>Falsche &amp;wiederholen</translation>
    </message>
    <message>
        <source>&amp;Replace</source>
        <translation>&amp;Ersetzen</translation>
    </message>
    <message>
        <source>&amp;Rising and falling readings</source>
        <translation>Steigende und &amp;fallende Messwerte</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>&amp;Sequence</source>
        <translation>&amp;Ablauf</translation>
    </message>
    <message>
        <source>&amp;Show the field in the set-up</source>
        <translation>Feld in der Einrichtung &amp;zeigen</translation>
    </message>
    <message>
        <source>&amp;State, remarks and history</source>
        <translation>&amp;Stand, Anmerkungen und Verlauf</translation>
    </message>
    <message>
        <source>&amp;Step up</source>
        <translation>Schritt nach &amp;oben</translation>
    </message>
    <message>
        <source>&amp;Stop reading</source>
        <translation>Lesen &amp;abbrechen</translation>
    </message>
    <message>
        <source>&amp;Summary</source>
        <translation>&amp;Zusammenfassung</translation>
    </message>
    <message>
        <source>&amp;Take readings</source>
        <translation>Messwerte ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>&amp;Teach</source>
        <translation>S&amp;chulung</translation>
    </message>
    <message>
        <source>&amp;Uncertainty of each point</source>
        <translation>&amp;Unsicherheit jedes Punkts</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Use this set</source>
        <translation>Diesen Satz &amp;verwenden</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>An&amp;sicht</translation>
    </message>
    <message>
        <source>&amp;Watch for recordings</source>
        <translation>Auf Aufzeichnungen &amp;warten</translation>
    </message>
    <message>
        <source>&amp;What if</source>
        <translation>&amp;Was wäre, wenn</translation>
    </message>
    <message>
        <source>&amp;Wiring</source>
        <translation>&amp;Verdrahtung</translation>
    </message>
    <message>
        <source>&amp;Yes</source>
        <translation>&amp;Ja</translation>
    </message>
    <message>
        <source>+ positive</source>
        <translation>+ positiv</translation>
    </message>
    <message>
        <source>+ positive  </source>
        <translation>+ positiv  </translation>
    </message>
    <message>
        <source>, active, </source>
        <translation>, aktiv, </translation>
    </message>
    <message>
        <source>, beyond the control limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, beyond the range</source>
        <translation>, außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>, but it can be read in more than one way</source>
        <translation>, lässt sich aber auf mehr als eine Art lesen</translation>
    </message>
    <message>
        <source>, deviation %1, limit ± %2</source>
        <translation>, Abweichung %1, Grenzwert ± %2</translation>
    </message>
    <message>
        <source>, end at </source>
        <translation>, Ende an </translation>
    </message>
    <message>
        <source>, excitation </source>
        <translation>, Speisung </translation>
    </message>
    <message>
        <source>, four-wire</source>
        <translation>, Vierleiter</translation>
    </message>
    <message>
        <source>, from </source>
        <translation>, von </translation>
    </message>
    <message>
        <source>, jumper to %1</source>
        <translation>, Steckbrücke nach %1</translation>
    </message>
    <message>
        <source>, six-wire</source>
        <translation>, Sechsleiter</translation>
    </message>
    <message>
        <source>0.25 mm² or AWG 26</source>
        <translation>0,25 mm² oder AWG 26</translation>
    </message>
    <message>
        <source>1 channel</source>
        <translation>1 Kanal</translation>
    </message>
    <message>
        <source>1 channel changes.</source>
        <translation>1 Kanal ändert sich.</translation>
    </message>
    <message>
        <source>1 channel is added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 error</source>
        <translation>1 Fehler</translation>
    </message>
    <message>
        <source>1 fault</source>
        <translation>1 Fehler</translation>
    </message>
    <message>
        <source>1 is left alone.</source>
        <translation>1 bleibt unverändert.</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>1 reading</source>
        <translation>1 Messwert</translation>
    </message>
    <message>
        <source>1 reading of an open check is dropped.</source>
        <translation>1 Messwert einer offenen Prüfung entfällt.</translation>
    </message>
    <message>
        <source>1 refuses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 row is refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 span of a step</source>
        <translation>1 Abschnitt einer Stufe</translation>
    </message>
    <message>
        <source>1 span of no step</source>
        <translation>1 Abschnitt ohne Stufe</translation>
    </message>
    <message>
        <source>1 stays as it is.</source>
        <translation>1 bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>1 step</source>
        <translation>1 Stufe</translation>
    </message>
    <message>
        <source>1 step, %1 in all</source>
        <translation>1 Stufe, insgesamt %1</translation>
    </message>
    <message>
        <source>1 warning</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>2026-05-31</source>
        <translation>2026-05-31</translation>
    </message>
    <message>
        <source>90 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>90 % interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>90 % interval ±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 % &amp;confidence band of the line</source>
        <translation>95-%-Vertrauens&amp;band der Geraden</translation>
    </message>
    <message>
        <source>95 % &amp;prediction band of a new reading</source>
        <translation>95-%-Vorhersageband eines neuen &amp;Messwerts</translation>
    </message>
    <message>
        <source>95 % confidence</source>
        <translation>95 % Vertrauen</translation>
    </message>
    <message>
        <source>95 % interval ±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 % prediction</source>
        <translation>95 % Vorhersage</translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; and %1 more</source>
        <translation>; und %1 weitere</translation>
    </message>
    <message>
        <source>; error</source>
        <translation>; Fehler</translation>
    </message>
    <message>
        <source>; warning</source>
        <translation>; Warnung</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>A channel has at most %1 pins.</source>
        <translation>Ein Kanal hat höchstens %1 Stifte.</translation>
    </message>
    <message>
        <source>A channel needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check needs a name: nothing was changed.</source>
        <translation>Eine Prüfung braucht einen Namen: Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>A day is written as year-month-day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A deviation up to its own U passes, a larger one fails. The limit plays no part.</source>
        <translation>Eine Abweichung bis zu ihrer eigenen U besteht, eine größere nicht. Der Grenzwert spielt keine Rolle.</translation>
    </message>
    <message>
        <source>A fault of this plan is known</source>
        <translation>Ein Fehler dieses Plans ist bekannt</translation>
    </message>
    <message>
        <source>A jumper joins two pins: add pins first.</source>
        <translation>Eine Steckbrücke verbindet zwei Stifte: zuerst Stifte anlegen.</translation>
    </message>
    <message>
        <source>A pattern of the names is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A potentiometer between arms 3 and 4, its wiper is S+. The wiper&apos;s number is the share that lies in arm 3.</source>
        <translation>Ein Potentiometer zwischen den Zweigen 3 und 4, der Schleifer ist S+. Die Zahl des Schleifers ist der Anteil, der in Zweig 3 liegt.</translation>
    </message>
    <message>
        <source>A potentiometer over the excitation, its wiper through a resistor to S+. The wiper is at P- with 0, at P+ with 1.</source>
        <translation>Ein Potentiometer über der Speisung, der Schleifer über einen Widerstand an S+. Der Schleifer steht bei 0 an P-, bei 1 an P+.</translation>
    </message>
    <message>
        <source>A recording that is complete is read as it arrives. It becomes a check of each channel that it has a column for, when each of them has a level for every step; a recording that leaves a choice waits in the list. Taking up can be undone.</source>
        <translation>Eine vollständige Aufzeichnung wird gelesen, sobald sie eintrifft. Sie wird zu einer Prüfung jedes Kanals, für den sie eine Spalte hat, wenn jeder davon für jede Stufe ein Plateau hat; eine Aufzeichnung, die eine Wahl lässt, wartet in der Liste. Das Übernehmen lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>A resistor or the instrument is past its due date today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shunt has at most %1 jumpers.</source>
        <translation>Ein Shunt hat höchstens %1 Steckbrücken.</translation>
    </message>
    <message>
        <source>A span where a level is held at the cursor; Shift and drag draws one</source>
        <translation>Ein Abschnitt, wo am Cursor ein Plateau gehalten wird; Umschalt und Ziehen zeichnet einen</translation>
    </message>
    <message>
        <source>A value is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A what-if says nothing about the real article.</source>
        <translation>Ein „Was wäre, wenn“ sagt nichts über den wirklichen Prüfling.</translation>
    </message>
    <message>
        <source>A zero step has no trials: what it shares with the zero reading cancels.</source>
        <translation>Eine Nullstufe hat keine Versuche: Was sie mit dem Nullwert gemeinsam hat, hebt sich auf.</translation>
    </message>
    <message>
        <source>A&amp;lign to template</source>
        <translation>An &amp;Vorlage angleichen</translation>
    </message>
    <message>
        <source>Abort</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>About Shuntwright</source>
        <translation>Über Shuntwright</translation>
    </message>
    <message>
        <source>Above this the ohmmeter shows no reading</source>
        <translation>Oberhalb davon zeigt das Ohmmeter keinen Messwert</translation>
    </message>
    <message>
        <source>Acquisition</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>Active area of a gauge&apos;s grid</source>
        <translation>Aktive Fläche eines Messgitters</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add %1 channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add %1 copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add &amp;remark to the step…</source>
        <translation>Anmerkung zur Stufe &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>Add &amp;step</source>
        <translation>&amp;Stufe anlegen</translation>
    </message>
    <message>
        <source>Add 1 channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a channel first. Its readings can then be taken from a recording.</source>
        <translation>Zuerst einen Kanal anlegen. Danach lassen sich seine Messwerte aus einer Aufzeichnung übernehmen.</translation>
    </message>
    <message>
        <source>Add a decade box</source>
        <translation>Eine Widerstandsdekade hinzufügen</translation>
    </message>
    <message>
        <source>Add a jumper for this shunt</source>
        <translation>Eine Steckbrücke für diesen Shunt anlegen</translation>
    </message>
    <message>
        <source>Add a pin below the chosen one</source>
        <translation>Einen Stift unter dem gewählten anlegen</translation>
    </message>
    <message>
        <source>Add a range of a series of preferred values</source>
        <translation>Einen Bereich einer Normwertreihe hinzufügen</translation>
    </message>
    <message>
        <source>Add a resistor across arm 2</source>
        <translation>Einen Widerstand über Zweig 2 anlegen</translation>
    </message>
    <message>
        <source>Add a resistor like the chosen one, with the next id; a pasted list adds its own rows</source>
        <translation>Einen Widerstand wie den gewählten mit der nächsten Kennung anlegen; eine eingefügte Liste legt ihre Zeilen selbst an</translation>
    </message>
    <message>
        <source>Add a step below the chosen one</source>
        <translation>Eine Stufe unter der gewählten anlegen</translation>
    </message>
    <message>
        <source>Add balance network</source>
        <translation>Abgleichnetzwerk anlegen</translation>
    </message>
    <message>
        <source>Add box</source>
        <translation>Dekade anlegen</translation>
    </message>
    <message>
        <source>Add channel</source>
        <translation>Kanal anlegen</translation>
    </message>
    <message>
        <source>Add check</source>
        <translation>Prüfung anlegen</translation>
    </message>
    <message>
        <source>Add decade box</source>
        <translation>Widerstandsdekade anlegen</translation>
    </message>
    <message>
        <source>Add input resistance</source>
        <translation>Eingangswiderstand anlegen</translation>
    </message>
    <message>
        <source>Add jumper</source>
        <translation>Steckbrücke anlegen</translation>
    </message>
    <message>
        <source>Add leak</source>
        <translation>Nebenschluss anlegen</translation>
    </message>
    <message>
        <source>Add pin</source>
        <translation>Stift anlegen</translation>
    </message>
    <message>
        <source>Add preferred values</source>
        <translation>Normwerte hinzufügen</translation>
    </message>
    <message>
        <source>Add range</source>
        <translation>Bereich anlegen</translation>
    </message>
    <message>
        <source>Add resistor</source>
        <translation>Widerstand anlegen</translation>
    </message>
    <message>
        <source>Add s&amp;hunt</source>
        <translation>S&amp;hunt anlegen</translation>
    </message>
    <message>
        <source>Add sense leads</source>
        <translation>Fühlerleitungen anlegen</translation>
    </message>
    <message>
        <source>Add shunt</source>
        <translation>Shunt anlegen</translation>
    </message>
    <message>
        <source>Add span</source>
        <translation>Abschnitt anlegen</translation>
    </message>
    <message>
        <source>Add span for step %1</source>
        <translation>Abschnitt für Stufe %1 anlegen</translation>
    </message>
    <message>
        <source>Add step</source>
        <translation>Stufe anlegen</translation>
    </message>
    <message>
        <source>Added %1 channels, %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added %1 channels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added %1 channels; %2 rows were refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added %1, in no step yet.</source>
        <translation>%1 angelegt, noch in keiner Stufe.</translation>
    </message>
    <message>
        <source>Added %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adds a fault or a change that is tried out</source>
        <translation>Fügt einen Fehler oder eine Änderung zum Ausprobieren hinzu</translation>
    </message>
    <message>
        <source>Add…</source>
        <translation>Hinzufügen…</translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align to template</source>
        <translation>An Vorlage angleichen</translation>
    </message>
    <message>
        <source>All Files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>All channels</source>
        <translation>Alle Kanäle</translation>
    </message>
    <message>
        <source>All channels of this recording</source>
        <translation>Alle Kanäle dieser Aufzeichnung</translation>
    </message>
    <message>
        <source>All checks over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All checks over time as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All figures in words</source>
        <translation>Alle Kennwerte in Worten</translation>
    </message>
    <message>
        <source>All gauges feel the opposite of what the template says</source>
        <translation>Alle DMS erfahren das Gegenteil dessen, was die Vorlage sagt</translation>
    </message>
    <message>
        <source>All is seen to.</source>
        <translation>Alles ist erledigt.</translation>
    </message>
    <message>
        <source>All pairs of points as a matrix</source>
        <translation>Alle Punktepaare als Matrix</translation>
    </message>
    <message>
        <source>All pairs of points on the bridge</source>
        <translation>Alle Punktepaare an der Brücke</translation>
    </message>
    <message>
        <source>All shown</source>
        <translation>Alle gezeigt</translation>
    </message>
    <message>
        <source>All shunts open.</source>
        <translation>Alle Shunts offen.</translation>
    </message>
    <message>
        <source>All steps are read.</source>
        <translation>Alle Stufen sind abgelesen.</translation>
    </message>
    <message>
        <source>All steps are within limits all the same.</source>
        <translation>Trotzdem liegen alle Stufen innerhalb der Grenzwerte.</translation>
    </message>
    <message>
        <source>All steps together: readings so far apart would have a probability of %1 if nothing but the zero had changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+0</source>
        <translation>Alt+0</translation>
    </message>
    <message>
        <source>Alt+1</source>
        <translation>Alt+1</translation>
    </message>
    <message>
        <source>Alt+2</source>
        <translation>Alt+2</translation>
    </message>
    <message>
        <source>Alt+3</source>
        <translation>Alt+3</translation>
    </message>
    <message>
        <source>Alt+4</source>
        <translation>Alt+4</translation>
    </message>
    <message>
        <source>Alt+5</source>
        <translation>Alt+5</translation>
    </message>
    <message>
        <source>Alt+6</source>
        <translation>Alt+6</translation>
    </message>
    <message>
        <source>Alt+7</source>
        <translation>Alt+7</translation>
    </message>
    <message>
        <source>Alt+8</source>
        <translation>Alt+8</translation>
    </message>
    <message>
        <source>Alt+9</source>
        <translation>Alt+9</translation>
    </message>
    <message>
        <source>Alt+R</source>
        <translation>Alt+R</translation>
    </message>
    <message>
        <source>An arm cannot be removed: a bridge has four. Choose another bridge in the set-up.</source>
        <translation>Ein Zweig lässt sich nicht entfernen: Eine Brücke hat vier. In der Einrichtung eine andere Brücke wählen.</translation>
    </message>
    <message>
        <source>And %1 more doubts.</source>
        <translation>Und %1 weitere Zweifel.</translation>
    </message>
    <message>
        <source>Another check of this channel has that name: nothing was changed.</source>
        <translation>Eine andere Prüfung dieses Kanals heißt so: Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Another check…</source>
        <translation>Andere Prüfung…</translation>
    </message>
    <message>
        <source>Answers to repeated questions do not count for the score.</source>
        <translation>Antworten auf wiederholte Aufgaben zählen nicht.</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <source>Apply %1 to %2</source>
        <translation>%1 auf %2 anwenden</translation>
    </message>
    <message>
        <source>Apply to channels</source>
        <translation>Auf Kanäle anwenden</translation>
    </message>
    <message>
        <source>Arm %1</source>
        <translation>Zweig %1</translation>
    </message>
    <message>
        <source>Arm %1 turns %2 mW into heat. With the active area of its grid this is compared with the usual power densities.</source>
        <translation>Zweig %1 setzt %2 mW in Wärme um. Mit der aktiven Fläche seines Gitters wird das mit den üblichen Leistungsdichten verglichen.</translation>
    </message>
    <message>
        <source>Arm %1, %2</source>
        <translation>Zweig %1, %2</translation>
    </message>
    <message>
        <source>Arm %1: </source>
        <translation>Zweig %1: </translation>
    </message>
    <message>
        <source>Arms as installed, without load</source>
        <translation>Zweige wie eingebaut, unbelastet</translation>
    </message>
    <message>
        <source>Arms at the old nominal value follow, others stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys move the leak from arm to arm, Enter keeps it there, Escape takes it back.</source>
        <translation>Pfeiltasten versetzen den Nebenschluss von Zweig zu Zweig, Eingabe behält ihn dort, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys move the wiper, Enter keeps it there, Escape takes it back.</source>
        <translation>Pfeiltasten bewegen den Schleifer, Eingabe behält ihn dort, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys move this end from point to point, Enter keeps it there, Escape takes it back.</source>
        <translation>Pfeiltasten versetzen dieses Ende von Punkt zu Punkt, Eingabe behält es dort, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys take this lead&apos;s end to another lead&apos;s terminal, Enter exchanges the two, Escape takes it back.</source>
        <translation>Pfeiltasten führen das Ende dieser Leitung zum Anschluss einer anderen, Eingabe tauscht die beiden, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Arrow keys take this resistor to another arm, Enter exchanges the two, Escape takes it back.</source>
        <translation>Pfeiltasten führen diesen Widerstand zu einem anderen Zweig, Eingabe tauscht die beiden, Esc nimmt es zurück.</translation>
    </message>
    <message>
        <source>Article under test</source>
        <translation>Prüfling</translation>
    </message>
    <message>
        <source>As for the last recording: %1.</source>
        <translation>Wie bei der letzten Aufzeichnung: %1.</translation>
    </message>
    <message>
        <source>As given here</source>
        <translation>Wie hier angegeben</translation>
    </message>
    <message>
        <source>As guessed instead</source>
        <translation>Stattdessen wie erkannt</translation>
    </message>
    <message>
        <source>As on the sheet: what is worth measuring in this state; only terminals: each two of them; all points: also ends of arms and of resistors</source>
        <translation>Wie auf dem Blatt: was in diesem Zustand messenswert ist; nur Anschlüsse: je zwei davon; alle Punkte: auch Enden von Zweigen und Widerständen</translation>
    </message>
    <message>
        <source>As the filter and sample rate ask</source>
        <translation>Wie Filter und Abtastrate es verlangen</translation>
    </message>
    <message>
        <source>As year-month-day; empty takes it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Gestellt</translation>
    </message>
    <message>
        <source>Assume again</source>
        <translation>Wieder annehmen</translation>
    </message>
    <message>
        <source>Assume uncertainty again</source>
        <translation>Unsicherheit wieder annehmen</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>At </source>
        <translation>Bei </translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Bei %1</translation>
    </message>
    <message>
        <source>At %1 the gauge factor is %2.</source>
        <translation>Bei %1 ist der k-Faktor %2.</translation>
    </message>
    <message>
        <source>At the article</source>
        <translation>Am Prüfling</translation>
    </message>
    <message>
        <source>At the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work: drawing all inputs and solving the network for each step.</source>
        <translation>In Arbeit: Alle Eingangsgrößen werden gezogen, und das Netzwerk wird für jede Stufe gelöst.</translation>
    </message>
    <message>
        <source>B, E</source>
        <translation>B, E</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Back to the views</source>
        <translation>Zurück zu den Ansichten</translation>
    </message>
    <message>
        <source>Balance network</source>
        <translation>Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>Balance network, parallel</source>
        <translation>Abgleichnetzwerk, parallel</translation>
    </message>
    <message>
        <source>Balance network, series</source>
        <translation>Abgleichnetzwerk, in Reihe</translation>
    </message>
    <message>
        <source>Balance: %1 between arms 3 and 4, wiper to S+, %2 % of it in arm 3. </source>
        <translation>Abgleich: %1 zwischen den Zweigen 3 und 4, Schleifer an S+, %2 % davon in Zweig 3. </translation>
    </message>
    <message>
        <source>Balance: %1 over the excitation, wiper at %2 % from P- through %3 to S+. </source>
        <translation>Abgleich: %1 über der Speisung, Schleifer bei %2 % ab P- über %3 an S+. </translation>
    </message>
    <message>
        <source>Be led through the check step by step, in large type</source>
        <translation>Schritt für Schritt durch die Prüfung geführt werden, in großer Schrift</translation>
    </message>
    <message>
        <source>Because:</source>
        <translation>Begründung:</translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before going on</source>
        <translation>Bevor es weitergeht</translation>
    </message>
    <message>
        <source>Before the first step</source>
        <translation>Vor der ersten Stufe</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Begin at the cursor</source>
        <translation>Am Cursor beginnen</translation>
    </message>
    <message>
        <source>Behind
(AIC)</source>
        <translation>Rückstand
(AIC)</translation>
    </message>
    <message>
        <source>Behind
(BIC)</source>
        <translation>Rückstand
(BIC)</translation>
    </message>
    <message>
        <source>Being worked out again. Before the edit: </source>
        <translation>Wird neu gerechnet. Vor der Änderung: </translation>
    </message>
    <message>
        <source>Bessel low-pass</source>
        <translation>Bessel-Tiefpass</translation>
    </message>
    <message>
        <source>Best sets of resistors</source>
        <translation>Beste Widerstandssätze</translation>
    </message>
    <message>
        <source>Between cells</source>
        <translation>Zwischen Zellen</translation>
    </message>
    <message>
        <source>Between two checks; to be fixed before the test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both checks</source>
        <translation>Beide Prüfungen</translation>
    </message>
    <message>
        <source>Bridge</source>
        <translation>Brücke</translation>
    </message>
    <message>
        <source>Bridge factor set</source>
        <translation>Eingestellter Brückenfaktor</translation>
    </message>
    <message>
        <source>Bridge of the question</source>
        <translation>Brücke der Aufgabe</translation>
    </message>
    <message>
        <source>Bridge template</source>
        <translation>Brückenvorlage</translation>
    </message>
    <message>
        <source>Bridge with its shunts</source>
        <translation>Brücke mit ihren Shunts</translation>
    </message>
    <message>
        <source>Bridge, Outcome and Sequence again (Alt+0)</source>
        <translation>Wieder Brücke, Ergebnis und Ablauf (Alt+0)</translation>
    </message>
    <message>
        <source>Bridge, nominal</source>
        <translation>Brücke, Nennwert</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Budget of the step</source>
        <translation>Budget der Stufe</translation>
    </message>
    <message>
        <source>Budget, %1</source>
        <translation>Budget, %1</translation>
    </message>
    <message>
        <source>Butterworth low-pass</source>
        <translation>Butterworth-Tiefpass</translation>
    </message>
    <message>
        <source>By &amp;width</source>
        <translation>Nach &amp;Breite</translation>
    </message>
    <message>
        <source>By how much the gain changed since the check before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By moving &amp;dots</source>
        <translation>Durch wandernde &amp;Punkte</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>C&amp;lear cells</source>
        <translation>Zellen &amp;leeren</translation>
    </message>
    <message>
        <source>C&amp;lear it</source>
        <translation>&amp;Leeren</translation>
    </message>
    <message>
        <source>C&amp;urrents</source>
        <translation>S&amp;tröme</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Cancelled: nothing was kept of the run.</source>
        <translation>Abgebrochen: Vom Durchgang wurde nichts behalten.</translation>
    </message>
    <message>
        <source>Cannot be predicted. </source>
        <translation>Nicht vorherzusagen. </translation>
    </message>
    <message>
        <source>Cannot tell</source>
        <translation>Nicht entscheidbar</translation>
    </message>
    <message>
        <source>Cannot tell: %1 against a margin of ± %2; how far it may be wrong is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot tell: %2 ± %3 %4 (95 %) is too uncertain for the margin of ± %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Nennlast</translation>
    </message>
    <message>
        <source>Cause and its size</source>
        <translation>Ursache und ihre Größe</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Kalibrierschein</translation>
    </message>
    <message>
        <source>Certificate of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Change
[%1]</source>
        <translation>Änderung
[%1]</translation>
    </message>
    <message>
        <source>Change
[%]</source>
        <translation>Änderung
[%]</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change Poisson&apos;s ratio</source>
        <translation>Querdehnzahl ändern</translation>
    </message>
    <message>
        <source>Change arm</source>
        <translation>Zweig ändern</translation>
    </message>
    <message>
        <source>Change balance network</source>
        <translation>Abgleichnetzwerk ändern</translation>
    </message>
    <message>
        <source>Change between two checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change bridge factor set</source>
        <translation>Eingestellten Brückenfaktor ändern</translation>
    </message>
    <message>
        <source>Change bridge template</source>
        <translation>Brückenvorlage ändern</translation>
    </message>
    <message>
        <source>Change capacity</source>
        <translation>Nennlast ändern</translation>
    </message>
    <message>
        <source>Change check details</source>
        <translation>Angaben zur Prüfung ändern</translation>
    </message>
    <message>
        <source>Change closed shunts</source>
        <translation>Geschlossene Shunts ändern</translation>
    </message>
    <message>
        <source>Change connection</source>
        <translation>Anschlussart ändern</translation>
    </message>
    <message>
        <source>Change connection of structure</source>
        <translation>Anschluss der Struktur ändern</translation>
    </message>
    <message>
        <source>Change correlation</source>
        <translation>Korrelation ändern</translation>
    </message>
    <message>
        <source>Change decade box</source>
        <translation>Widerstandsdekade ändern</translation>
    </message>
    <message>
        <source>Change decision rule</source>
        <translation>Entscheidungsregel ändern</translation>
    </message>
    <message>
        <source>Change document details</source>
        <translation>Angaben zum Dokument ändern</translation>
    </message>
    <message>
        <source>Change due date of shunt</source>
        <translation>Fälligkeit des Shunts ändern</translation>
    </message>
    <message>
        <source>Change excitation</source>
        <translation>Speisung ändern</translation>
    </message>
    <message>
        <source>Change filter</source>
        <translation>Filter ändern</translation>
    </message>
    <message>
        <source>Change gauge factor</source>
        <translation>k-Faktor ändern</translation>
    </message>
    <message>
        <source>Change gauge factor set</source>
        <translation>Eingestellten k-Faktor ändern</translation>
    </message>
    <message>
        <source>Change gauge factor&apos;s coefficient</source>
        <translation>Temperaturkoeffizient des k-Faktors ändern</translation>
    </message>
    <message>
        <source>Change gauge factor&apos;s temperature</source>
        <translation>Bezugstemperatur des k-Faktors ändern</translation>
    </message>
    <message>
        <source>Change gauge resistance</source>
        <translation>DMS-Widerstand ändern</translation>
    </message>
    <message>
        <source>Change gauge temperature</source>
        <translation>DMS-Temperatur ändern</translation>
    </message>
    <message>
        <source>Change grid area</source>
        <translation>Gitterfläche ändern</translation>
    </message>
    <message>
        <source>Change group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change heat sink</source>
        <translation>Wärmeableitung ändern</translation>
    </message>
    <message>
        <source>Change hold</source>
        <translation>Haltezeit ändern</translation>
    </message>
    <message>
        <source>Change input resistance</source>
        <translation>Eingangswiderstand ändern</translation>
    </message>
    <message>
        <source>Change lead</source>
        <translation>Leitung ändern</translation>
    </message>
    <message>
        <source>Change lead temperature</source>
        <translation>Leitungstemperatur ändern</translation>
    </message>
    <message>
        <source>Change leak</source>
        <translation>Nebenschluss ändern</translation>
    </message>
    <message>
        <source>Change limit</source>
        <translation>Grenzwert ändern</translation>
    </message>
    <message>
        <source>Change linearisation</source>
        <translation>Linearisierung ändern</translation>
    </message>
    <message>
        <source>Change mains</source>
        <translation>Netzfrequenz ändern</translation>
    </message>
    <message>
        <source>Change measurement</source>
        <translation>Messung ändern</translation>
    </message>
    <message>
        <source>Change name</source>
        <translation>Namen ändern</translation>
    </message>
    <message>
        <source>Change nominal resistance</source>
        <translation>Nennwiderstand ändern</translation>
    </message>
    <message>
        <source>Change note</source>
        <translation>Notiz ändern</translation>
    </message>
    <message>
        <source>Change of each step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change of each step as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change of each step, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change over its expanded uncertainty; beyond 1 either way it is more than uncertainty explains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change place of leak</source>
        <translation>Ort des Nebenschlusses ändern</translation>
    </message>
    <message>
        <source>Change preferred values</source>
        <translation>Normwerte ändern</translation>
    </message>
    <message>
        <source>Change range</source>
        <translation>Bereich ändern</translation>
    </message>
    <message>
        <source>Change rated output</source>
        <translation>Nennkennwert ändern</translation>
    </message>
    <message>
        <source>Change ratiometric</source>
        <translation>Ratiometrisch ändern</translation>
    </message>
    <message>
        <source>Change reading unit</source>
        <translation>Anzeigeeinheit ändern</translation>
    </message>
    <message>
        <source>Change reference line</source>
        <translation>Bezugsgerade ändern</translation>
    </message>
    <message>
        <source>Change resistor of the stock</source>
        <translation>Widerstand des Bestands ändern</translation>
    </message>
    <message>
        <source>Change sample rate</source>
        <translation>Abtastrate ändern</translation>
    </message>
    <message>
        <source>Change scale</source>
        <translation>Skalierung ändern</translation>
    </message>
    <message>
        <source>Change scaled unit</source>
        <translation>Skalierte Einheit ändern</translation>
    </message>
    <message>
        <source>Change settling</source>
        <translation>Einschwingzeit ändern</translation>
    </message>
    <message>
        <source>Change shunt</source>
        <translation>Shunt ändern</translation>
    </message>
    <message>
        <source>Change shunt wires</source>
        <translation>Shuntleitungen ändern</translation>
    </message>
    <message>
        <source>Change switch of shunt</source>
        <translation>Schalter des Shunts ändern</translation>
    </message>
    <message>
        <source>Change uncertainty</source>
        <translation>Unsicherheit ändern</translation>
    </message>
    <message>
        <source>Change what a pin leads to</source>
        <translation>Ziel eines Stifts ändern</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed %1 channels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed %1 channels; %2 refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed by %2 ± %3 %4 (95 %), not within the margin of ± %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed by you: %1.</source>
        <translation>Von Hand geändert: %1.</translation>
    </message>
    <message>
        <source>Changed by you; back to what is guessed from the file</source>
        <translation>Von Hand geändert; zurück zu dem, was aus der Datei erkannt wurde</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Channel %1, %2</source>
        <translation>Kanal %1, %2</translation>
    </message>
    <message>
        <source>Channel %1, from %2 to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel set-up</source>
        <translation>Einrichtung des Kanals</translation>
    </message>
    <message>
        <source>Channel that each row is a copy of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channels</source>
        <translation>Kanäle</translation>
    </message>
    <message>
        <source>Channels and their columns</source>
        <translation>Kanäle und ihre Spalten</translation>
    </message>
    <message>
        <source>Channels from a list kept in a spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channels to review</source>
        <translation>Kanäle zur Durchsicht</translation>
    </message>
    <message>
        <source>Channels with a column: %1, ticked: %2.</source>
        <translation>Kanäle mit Spalte: %1, angehakt: %2.</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Chec&amp;k</source>
        <translation>&amp;Prüfung</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Check of the wiring</source>
        <translation>Prüfung der Verdrahtung</translation>
    </message>
    <message>
        <source>Check of the wiring: %1</source>
        <translation>Prüfung der Verdrahtung: %1</translation>
    </message>
    <message>
        <source>Checks are called</source>
        <translation>Prüfungen heißen</translation>
    </message>
    <message>
        <source>Choices</source>
        <translation>Auswahl</translation>
    </message>
    <message>
        <source>Choose &amp;file…</source>
        <translation>&amp;Datei wählen…</translation>
    </message>
    <message>
        <source>Choose &amp;resistors…</source>
        <translation>&amp;Widerstände wählen…</translation>
    </message>
    <message>
        <source>Choose a recording first.</source>
        <translation>Zuerst eine Aufzeichnung wählen.</translation>
    </message>
    <message>
        <source>Choose a recording: how it is read is guessed from the file and said here.</source>
        <translation>Eine Aufzeichnung wählen: Wie sie gelesen wird, wird aus der Datei erkannt und hier gesagt.</translation>
    </message>
    <message>
        <source>Choose a step, above or in the sequence.</source>
        <translation>Eine Stufe wählen, oben oder im Ablauf.</translation>
    </message>
    <message>
        <source>Choose an answer first: keys 1 to %1.</source>
        <translation>Zuerst eine Antwort wählen: Tasten 1 bis %1.</translation>
    </message>
    <message>
        <source>Choose at least one kind of question.</source>
        <translation>Mindestens eine Aufgabenart wählen.</translation>
    </message>
    <message>
        <source>Choose at least one part.</source>
        <translation>Mindestens einen Teil wählen.</translation>
    </message>
    <message>
        <source>Choose channels.</source>
        <translation>Kanäle wählen.</translation>
    </message>
    <message>
        <source>Choose part of shunt</source>
        <translation>Widerstand des Shunts wählen</translation>
    </message>
    <message>
        <source>Choose resistors</source>
        <translation>Widerstände wählen</translation>
    </message>
    <message>
        <source>Choose resistors…</source>
        <translation>Widerstände wählen…</translation>
    </message>
    <message>
        <source>Choose rows whose uncertainty is stated.</source>
        <translation>Zeilen wählen, deren Unsicherheit angegeben ist.</translation>
    </message>
    <message>
        <source>Choose the column of this channel in the table above.</source>
        <translation>Die Spalte dieses Kanals in der Tabelle oben wählen.</translation>
    </message>
    <message>
        <source>Choose the first of the two spans to join.</source>
        <translation>Den ersten der beiden zu verbindenden Abschnitte wählen.</translation>
    </message>
    <message>
        <source>Choose the jumper to remove.</source>
        <translation>Die zu entfernende Steckbrücke wählen.</translation>
    </message>
    <message>
        <source>Choose the pin to move.</source>
        <translation>Den zu verschiebenden Stift wählen.</translation>
    </message>
    <message>
        <source>Choose the pin to remove.</source>
        <translation>Den zu entfernenden Stift wählen.</translation>
    </message>
    <message>
        <source>Choose the row to remove.</source>
        <translation>Die zu entfernende Zeile wählen.</translation>
    </message>
    <message>
        <source>Choose the shunt to remove.</source>
        <translation>Den zu entfernenden Shunt wählen.</translation>
    </message>
    <message>
        <source>Choose the step first.</source>
        <translation>Zuerst die Stufe wählen.</translation>
    </message>
    <message>
        <source>Choose the step that the chosen span is the reading of</source>
        <translation>Die Stufe wählen, deren Messwert der gewählte Abschnitt ist</translation>
    </message>
    <message>
        <source>Choose the step to remove.</source>
        <translation>Die zu entfernende Stufe wählen.</translation>
    </message>
    <message>
        <source>Chosen from</source>
        <translation>Gewählt aus</translation>
    </message>
    <message>
        <source>Chosen step</source>
        <translation>Gewählte Stufe</translation>
    </message>
    <message>
        <source>Chosen: </source>
        <translation>Gewählt: </translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Clear cells</source>
        <translation>Zellen leeren</translation>
    </message>
    <message>
        <source>Clear ohmmeter readings</source>
        <translation>Ohmmeterwerte leeren</translation>
    </message>
    <message>
        <source>Clear readings</source>
        <translation>Messwerte leeren</translation>
    </message>
    <message>
        <source>Clear the list</source>
        <translation>Liste leeren</translation>
    </message>
    <message>
        <source>Clear the score</source>
        <translation>Punktestand löschen</translation>
    </message>
    <message>
        <source>Clear the score…</source>
        <translation>Punktestand löschen…</translation>
    </message>
    <message>
        <source>Click a mark or a row, or walk the steps with ← and →, to read what is said of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click, Shift ← →</source>
        <translation>Klick, Umschalt ← →</translation>
    </message>
    <message>
        <source>Click, double click</source>
        <translation>Klick, Doppelklick</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close a check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close check</source>
        <translation>Prüfung abschließen</translation>
    </message>
    <message>
        <source>Close checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close this group</source>
        <translation>Diese Gruppe zuklappen</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Closed check, not to be changed.</source>
        <translation>Abgeschlossene Prüfung, nicht zu ändern.</translation>
    </message>
    <message>
        <source>Closed: %1</source>
        <translation>Geschlossen: %1</translation>
    </message>
    <message>
        <source>Colours of the s&amp;ystem</source>
        <translation>Farben des S&amp;ystems</translation>
    </message>
    <message>
        <source>Column of the recording</source>
        <translation>Spalte der Aufzeichnung</translation>
    </message>
    <message>
        <source>Columns left out: %1.</source>
        <translation>Ausgelassene Spalten: %1.</translation>
    </message>
    <message>
        <source>Combined error</source>
        <translation>Zusammengesetzter Fehler</translation>
    </message>
    <message>
        <source>Combined standard uncertainty u = %1 %2; %3.</source>
        <translation>Kombinierte Standardunsicherheit u = %1 %2; %3.</translation>
    </message>
    <message>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>Compare with the &amp;other check</source>
        <translation>Mit der anderen Prüfung &amp;vergleichen</translation>
    </message>
    <message>
        <source>Complete after no change for</source>
        <translation>Vollständig ohne Änderung seit</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Computer</translation>
    </message>
    <message>
        <source>Confidence band</source>
        <translation>Vertrauensband</translation>
    </message>
    <message>
        <source>Connector</source>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>Constant current</source>
        <translation>Konstantstrom</translation>
    </message>
    <message>
        <source>Constant voltage</source>
        <translation>Konstantspannung</translation>
    </message>
    <message>
        <source>Contribution
[%1]</source>
        <translation>Beitrag
[%1]</translation>
    </message>
    <message>
        <source>Control and safety channels fed by this bridge are out of service</source>
        <translation>Von dieser Brücke gespeiste Regel- und Sicherheitskanäle sind außer Betrieb</translation>
    </message>
    <message>
        <source>Copied %1 rows of data.</source>
        <translation>%1 Datenzeilen kopiert.</translation>
    </message>
    <message>
        <source>Copied %1 rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied 1 row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied the bridge as a picture.</source>
        <translation>Brücke als Bild kopiert.</translation>
    </message>
    <message>
        <source>Copied the outcome as a picture.</source>
        <translation>Ergebnis als Bild kopiert.</translation>
    </message>
    <message>
        <source>Copies of %1 are put behind it: bridge, plan, limits and group, without checks. Names, recording columns and pins are counted up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies the sentence, all causes and the chosen one in full</source>
        <translation>Kopiert den Satz, alle Ursachen und die gewählte in voller Länge</translation>
    </message>
    <message>
        <source>Copies the whole working of this step</source>
        <translation>Kopiert den ganzen Rechenweg dieser Stufe</translation>
    </message>
    <message>
        <source>Copies what is tried out, the sentence and the table</source>
        <translation>Kopiert, was ausprobiert wird, den Satz und die Tabelle</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy as &amp;data</source>
        <translation>Als &amp;Daten kopieren</translation>
    </message>
    <message>
        <source>Copy as &amp;picture</source>
        <translation>Als &amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Copy as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Copy channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy or export what is shown</source>
        <translation>Kopieren oder exportieren, was gezeigt wird</translation>
    </message>
    <message>
        <source>Copy outcome as &amp;picture</source>
        <translation>Ergebnis als &amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Copy outcome as da&amp;ta</source>
        <translation>Ergebnis als &amp;Daten kopieren</translation>
    </message>
    <message>
        <source>Copy rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the wiring first: the jumpers would short the excitation.</source>
        <translation>Zuerst die Verdrahtung berichtigen: Die Steckbrücken würden die Speisung kurzschließen.</translation>
    </message>
    <message>
        <source>Correction</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>Correction of the bridge&apos;s nonlinearity</source>
        <translation>Korrektur der Nichtlinearität der Brücke</translation>
    </message>
    <message>
        <source>Correlation
in group</source>
        <translation>Korrelation
in Gruppe</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Coverage of all U</source>
        <translation>Überdeckung aller U</translation>
    </message>
    <message>
        <source>Coverage probability of expanded uncertainties</source>
        <translation>Überdeckungswahrscheinlichkeit erweiterter Unsicherheiten</translation>
    </message>
    <message>
        <source>Covers the electrical chain only, not gauge factor, bond or alignment.</source>
        <translation>Umfasst nur die elektrische Messkette, nicht k-Faktor, Klebung oder Ausrichtung.</translation>
    </message>
    <message>
        <source>Create New Folder</source>
        <translation>Neuen Ordner anlegen</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Ctrl ← →</source>
        <translation>Strg ← →</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation>Ctrl+2</translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translation>Ctrl+3</translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translation>Ctrl+4</translation>
    </message>
    <message>
        <source>Ctrl+5</source>
        <translation>Ctrl+5</translation>
    </message>
    <message>
        <source>Ctrl+6</source>
        <translation>Ctrl+6</translation>
    </message>
    <message>
        <source>Ctrl+7</source>
        <translation>Ctrl+7</translation>
    </message>
    <message>
        <source>Ctrl+8</source>
        <translation>Ctrl+8</translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation>Ctrl+9</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Ctrl+Down</source>
        <translation>Ctrl+Down</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation>Ctrl+Shift+A</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>Ctrl+Shift+H</source>
        <translation>Ctrl+Shift+H</translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation>Ctrl+Shift+M</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Shift+O</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T</source>
        <translation>Ctrl+Shift+T</translation>
    </message>
    <message>
        <source>Ctrl+Shift+V</source>
        <translation>Ctrl+Shift+V</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Ctrl+Up</source>
        <translation>Ctrl+Up</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Cutoff (-3 dB)</source>
        <translation>Grenzfrequenz (-3 dB)</translation>
    </message>
    <message>
        <source>Cutoff frequency of the filter</source>
        <translation>Grenzfrequenz des Filters</translation>
    </message>
    <message>
        <source>D&amp;uplicate shunt</source>
        <translation>Shunt &amp;verdoppeln</translation>
    </message>
    <message>
        <source>Dashed: the check %1.</source>
        <translation>Gestrichelt: die Prüfung %1.</translation>
    </message>
    <message>
        <source>Data taken in between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Date Modified</source>
        <translation>Änderungsdatum</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decade boxes</source>
        <translation>Widerstandsdekaden</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Entschieden nach</translation>
    </message>
    <message>
        <source>Decide…</source>
        <translation>Entscheiden…</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Decision rule</source>
        <translation>Entscheidungsregel</translation>
    </message>
    <message>
        <source>Degrees of
freedom</source>
        <translation>Freiheits-
grade</translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Delete span</source>
        <translation>Abschnitt löschen</translation>
    </message>
    <message>
        <source>Demo (invented data)</source>
        <translation>Demo (erfundene Daten)</translation>
    </message>
    <message>
        <source>Detail View</source>
        <translation>Detailansicht</translation>
    </message>
    <message>
        <source>Details of the check</source>
        <translation>Angaben zur Prüfung</translation>
    </message>
    <message>
        <source>Details of the document</source>
        <translation>Angaben zum Dokument</translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Deviation
[%1]</source>
        <translation>Abweichung
[%1]</translation>
    </message>
    <message>
        <source>Deviation from expected</source>
        <translation>Abweichung vom erwarteten Wert</translation>
    </message>
    <message>
        <source>Deviation from the expected reading over its own standard uncertainty. Beyond 2 either way it is seldom chance.</source>
        <translation>Abweichung vom erwarteten Messwert durch ihre eigene Standardunsicherheit. Jenseits von 2 in einer der Richtungen ist es selten Zufall.</translation>
    </message>
    <message>
        <source>Diagnosis</source>
        <translation>Diagnose</translation>
    </message>
    <message>
        <source>Dials</source>
        <translation>Drehschalter</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Differenz</translation>
    </message>
    <message>
        <source>Difference of the checks</source>
        <translation>Differenz der Prüfungen</translation>
    </message>
    <message>
        <source>Difference over the reading without; −200 % where the sign turns and the size stays</source>
        <translation>Differenz durch den Messwert ohne; −200 %, wo sich das Vorzeichen umkehrt und der Betrag bleibt</translation>
    </message>
    <message>
        <source>Differs by %2 ± %3 %4 (95 %), which is shown to lie within the margin of ± %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difficulty</source>
        <translation>Schwierigkeit</translation>
    </message>
    <message>
        <source>Directory:</source>
        <translation>Ordner:</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Distribution</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>Don&apos;t Save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Drag an edge</source>
        <translation>Eine Kante ziehen</translation>
    </message>
    <message>
        <source>Drag background, ← →</source>
        <translation>Hintergrund ziehen, ← →</translation>
    </message>
    <message>
        <source>Drag the chosen span</source>
        <translation>Gewählten Abschnitt ziehen</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Drawing of the wiring</source>
        <translation>Zeichnung der Verdrahtung</translation>
    </message>
    <message>
        <source>Drawing: jumpers of %1</source>
        <translation>Zeichnung: Steckbrücken von %1</translation>
    </message>
    <message>
        <source>Draws every input from its distribution and solves the whole network each time, nothing linearised, until the result has settled</source>
        <translation>Zieht jede Eingangsgröße aus ihrer Verteilung und löst jedes Mal das ganze Netzwerk, ohne Linearisierung, bis sich das Ergebnis beruhigt hat</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Laufwerk</translation>
    </message>
    <message>
        <source>Drop the end on a node; elsewhere nothing changes.</source>
        <translation>Das Ende auf einem Knoten ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop the lead on another lead&apos;s terminal; elsewhere nothing changes.</source>
        <translation>Die Leitung auf dem Anschluss einer anderen ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop the leak on another arm; elsewhere nothing changes.</source>
        <translation>Den Nebenschluss auf einem anderen Zweig ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop the resistor on another arm; elsewhere nothing changes.</source>
        <translation>Den Widerstand auf einem anderen Zweig ablegen; anderswo ändert sich nichts.</translation>
    </message>
    <message>
        <source>Drop what is stated in the chosen rows and take the usual values of their class</source>
        <translation>Angaben der gewählten Zeilen verwerfen und die üblichen Werte ihrer Klasse nehmen</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Due date of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate channel</source>
        <translation>Kanal verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate shunt</source>
        <translation>Shunt verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate shunts</source>
        <translation>Shunts verdoppeln</translation>
    </message>
    <message>
        <source>E&amp;nd the run safely…</source>
        <translation>Durchgang sicher &amp;beenden…</translation>
    </message>
    <message>
        <source>E&amp;xport picture…</source>
        <translation>Bild e&amp;xportieren…</translation>
    </message>
    <message>
        <source>Each row is a channel &amp;like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each shunt alone</source>
        <translation>Jeder Shunt allein</translation>
    </message>
    <message>
        <source>Earlier check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit %1 channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit &amp;many channels…</source>
        <translation>&amp;Mehrere Kanäle ändern…</translation>
    </message>
    <message>
        <source>Edit 1 channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit chosen channels…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit chosen…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit, show, export</source>
        <translation>Bearbeiten, zeigen, exportieren</translation>
    </message>
    <message>
        <source>Else the chosen channel alone</source>
        <translation>Sonst nur der gewählte Kanal</translation>
    </message>
    <message>
        <source>Else to all values of the recording</source>
        <translation>Sonst alle Werte der Aufzeichnung</translation>
    </message>
    <message>
        <source>Empty document. Add a channel to begin.</source>
        <translation>Leeres Dokument. Zum Beginnen einen Kanal anlegen.</translation>
    </message>
    <message>
        <source>Empty the readings of all states</source>
        <translation>Die Messwerte aller Zustände leeren</translation>
    </message>
    <message>
        <source>En</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Encoding</source>
        <translation>Zeichensatz</translation>
    </message>
    <message>
        <source>End at the cursor</source>
        <translation>Am Cursor enden</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Enter ohmmeter reading</source>
        <translation>Ohmmeterwert eintragen</translation>
    </message>
    <message>
        <source>Enter reading</source>
        <translation>Messwert eintragen</translation>
    </message>
    <message>
        <source>Enter reading of step %1</source>
        <translation>Messwert der Stufe %1 eintragen</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Error of the ohmmeter and its leads whatever the reading</source>
        <translation>Fehler des Ohmmeters und seiner Leitungen, unabhängig vom Messwert</translation>
    </message>
    <message>
        <source>Error of the ohmmeter as a share of the reading</source>
        <translation>Fehler des Ohmmeters als Anteil des Messwerts</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Every shunt whose part is in the stock takes value, due date and uncertainty anew</source>
        <translation>Jeder Shunt, dessen Widerstand im Bestand ist, übernimmt Wert, Fälligkeit und Unsicherheit neu</translation>
    </message>
    <message>
        <source>Exact</source>
        <translation>Genau</translation>
    </message>
    <message>
        <source>Exchange arms</source>
        <translation>Zweige tauschen</translation>
    </message>
    <message>
        <source>Exchange leads</source>
        <translation>Leitungen tauschen</translation>
    </message>
    <message>
        <source>Excitation</source>
        <translation>Speisung</translation>
    </message>
    <message>
        <source>Excitation current</source>
        <translation>Speisestrom</translation>
    </message>
    <message>
        <source>Excitation swapped</source>
        <translation>Speisung vertauscht</translation>
    </message>
    <message>
        <source>Excited by</source>
        <translation>Gespeist mit</translation>
    </message>
    <message>
        <source>Expanded uncertainty of the change at the coverage of the decision rule; what both checks share is taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expanded uncertainty on the certificate, in ohm or as a share of the value</source>
        <translation>Erweiterte Unsicherheit laut Kalibrierschein, in Ohm oder als Anteil des Werts</translation>
    </message>
    <message>
        <source>Expanded uncertainty. %1 The scope is chosen on the page Budget.</source>
        <translation>Erweiterte Unsicherheit. %1 Der Bereich wird auf der Seite Budget gewählt.</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>Expected
[%1]</source>
        <translation>Erwartet
[%1]</translation>
    </message>
    <message>
        <source>Expected reading</source>
        <translation>Erwarteter Messwert</translation>
    </message>
    <message>
        <source>Expected reading of the plan as it is</source>
        <translation>Erwarteter Messwert des Plans, wie er ist</translation>
    </message>
    <message>
        <source>Explains every reading</source>
        <translation>Erklärt jeden Messwert</translation>
    </message>
    <message>
        <source>Explains,
%</source>
        <translation>Erklärt,
%</translation>
    </message>
    <message>
        <source>Export resistors</source>
        <translation>Widerstände exportieren</translation>
    </message>
    <message>
        <source>Export the bridge</source>
        <translation>Brücke exportieren</translation>
    </message>
    <message>
        <source>Export the outcome</source>
        <translation>Ergebnis exportieren</translation>
    </message>
    <message>
        <source>Export the overview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>F5</source>
        <translation>F5</translation>
    </message>
    <message>
        <source>Factor changes by</source>
        <translation>Faktor ändert sich um</translation>
    </message>
    <message>
        <source>Factor stated at</source>
        <translation>Faktor angegeben bei</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Fallend</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Fault: the check cannot succeed, or something can be damaged. Warning: the check is weaker for it. Note: worth knowing</source>
        <translation>Fehler: Die Prüfung kann nicht gelingen, oder etwas kann Schaden nehmen. Warnung: Die Prüfung ist dadurch schwächer. Hinweis: wissenswert</translation>
    </message>
    <message>
        <source>Faults in the order in which they fit</source>
        <translation>Fehler in der Reihenfolge, in der sie passen</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>Figures in words</source>
        <translation>Kennwerte in Worten</translation>
    </message>
    <message>
        <source>Figures of merit</source>
        <translation>Kennwerte</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>File &amp;name:</source>
        <translation>Datei&amp;name:</translation>
    </message>
    <message>
        <source>File Folder</source>
        <translation>Dateiordner</translation>
    </message>
    <message>
        <source>File and check</source>
        <translation>Datei und Prüfung</translation>
    </message>
    <message>
        <source>File names</source>
        <translation>Dateinamen</translation>
    </message>
    <message>
        <source>Files of type:</source>
        <translation>Dateien vom Typ:</translation>
    </message>
    <message>
        <source>Filter before the readings</source>
        <translation>Filter vor den Messwerten</translation>
    </message>
    <message>
        <source>Find recording</source>
        <translation>Aufzeichnung suchen</translation>
    </message>
    <message>
        <source>Find recordings from the new folder</source>
        <translation>Aufzeichnungen des neuen Ordners suchen</translation>
    </message>
    <message>
        <source>Find the held levels in a recording</source>
        <translation>Die gehaltenen Plateaus einer Aufzeichnung finden</translation>
    </message>
    <message>
        <source>Find the recording</source>
        <translation>Die Aufzeichnung suchen</translation>
    </message>
    <message>
        <source>Find the recording…</source>
        <translation>Aufzeichnung suchen…</translation>
    </message>
    <message>
        <source>Find the resistors that come nearest to the levels wanted</source>
        <translation>Die Widerstände finden, die den gewünschten Stufenwerten am nächsten kommen</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>First lines</source>
        <translation>Erste Zeilen</translation>
    </message>
    <message>
        <source>First lines of the file</source>
        <translation>Erste Zeilen der Datei</translation>
    </message>
    <message>
        <source>First number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Fit axis to &amp;bars</source>
        <translation>Achse an &amp;Balken anpassen</translation>
    </message>
    <message>
        <source>Fit axis to li&amp;mits</source>
        <translation>Achse an &amp;Grenzwerte anpassen</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Fitted &amp;line</source>
        <translation>Angepasste &amp;Gerade</translation>
    </message>
    <message>
        <source>Fitted already</source>
        <translation>Schon eingebaut</translation>
    </message>
    <message>
        <source>Fitted in</source>
        <translation>Eingebaut bei</translation>
    </message>
    <message>
        <source>Fitted line</source>
        <translation>Angepasste Gerade</translation>
    </message>
    <message>
        <source>Fitted line less expected</source>
        <translation>Angepasste Gerade minus erwartet</translation>
    </message>
    <message>
        <source>Fitted, by value</source>
        <translation>Angepasst, nach Wert</translation>
    </message>
    <message>
        <source>Fixed beforehand: a change that is shown to be smaller counts as unchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Folder to watch</source>
        <translation>Zu beobachtender Ordner</translation>
    </message>
    <message>
        <source>For %1: say what is wanted and press Search. Every set of resistors is looked at, or ruled out.</source>
        <translation>Für %1: angeben, was gewünscht ist, und „Suchen“ drücken. Jeder Widerstandssatz wird betrachtet oder ausgeschlossen.</translation>
    </message>
    <message>
        <source>Forget what is done with</source>
        <translation>Erledigtes vergessen</translation>
    </message>
    <message>
        <source>Forget what is watched; the list stays</source>
        <translation>Vergessen, was beobachtet wird; die Liste bleibt</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>Formula gives</source>
        <translation>Formel ergibt</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vorwärts</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From &amp;recording…</source>
        <translation>Aus &amp;Aufzeichnung…</translation>
    </message>
    <message>
        <source>From [s]</source>
        <translation>Von [s]</translation>
    </message>
    <message>
        <source>From length and size of a wire</source>
        <translation>Aus Länge und Querschnitt einer Leitung</translation>
    </message>
    <message>
        <source>From node</source>
        <translation>Knoten von</translation>
    </message>
    <message>
        <source>From pattern…</source>
        <translation>Nach Muster…</translation>
    </message>
    <message>
        <source>From pin</source>
        <translation>Stift von</translation>
    </message>
    <message>
        <source>From recording…</source>
        <translation>Aus Aufzeichnung…</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Fortgeschritten</translation>
    </message>
    <message>
        <source>Further channels</source>
        <translation>Weitere Kanäle</translation>
    </message>
    <message>
        <source>G</source>
        <translation>G</translation>
    </message>
    <message>
        <source>Gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gain change, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gain, measured over expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge factor</source>
        <translation>k-Faktor</translation>
    </message>
    <message>
        <source>Gauge factor of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge factor set</source>
        <translation>Eingestellter k-Faktor</translation>
    </message>
    <message>
        <source>Gauge resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge signs reversed</source>
        <translation>DMS-Vorzeichen umgekehrt</translation>
    </message>
    <message>
        <source>Gauge, nominal</source>
        <translation>DMS, Nennwert</translation>
    </message>
    <message>
        <source>Gauges are at</source>
        <translation>DMS haben</translation>
    </message>
    <message>
        <source>Give all chosen channels another value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give all spans to the steps that they fit</source>
        <translation>Alle Abschnitte den Stufen geben, zu denen sie passen</translation>
    </message>
    <message>
        <source>Give span to step %1</source>
        <translation>Abschnitt der Stufe %1 geben</translation>
    </message>
    <message>
        <source>Give the chosen span to a step (G), or take it from its step (N)</source>
        <translation>Den gewählten Abschnitt einer Stufe geben (G) oder seiner Stufe nehmen (N)</translation>
    </message>
    <message>
        <source>Give to a step…</source>
        <translation>Einer Stufe geben…</translation>
    </message>
    <message>
        <source>Give to step</source>
        <translation>Einer Stufe geben</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Angegeben als</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Go on with %1 at step %2</source>
        <translation>Mit %1 bei Stufe %2 weiter</translation>
    </message>
    <message>
        <source>Greatest bridge output that the instrument takes</source>
        <translation>Größtes Brückensignal, das das Gerät aufnimmt</translation>
    </message>
    <message>
        <source>Greatest deviation of any reading from the line below, as a share of the measured span.</source>
        <translation>Größte Abweichung irgendeines Messwerts von der Geraden unten, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Greatest deviation of the mean readings, rising and falling averaged, from the line below, as a share of the measured span.</source>
        <translation>Größte Abweichung der mittleren Messwerte, steigend und fallend gemittelt, von der Geraden unten, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Greatest difference of the falling and the rising reading of one level, as a share of the measured span.</source>
        <translation>Größte Differenz des fallenden und des steigenden Messwerts eines Stufenwerts, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Greatest error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Greatest level</source>
        <translation>Größter Stufenwert</translation>
    </message>
    <message>
        <source>Greatest miss</source>
        <translation>Größter Abstand</translation>
    </message>
    <message>
        <source>Greatest share of U in the limit</source>
        <translation>Größter Anteil von U am Grenzwert</translation>
    </message>
    <message>
        <source>Greatest spread of the readings of one level reached from the same side, as a share of the measured span.</source>
        <translation>Größte Streuung der Messwerte eines Stufenwerts, der von derselben Seite erreicht wird, als Anteil der gemessenen Spanne.</translation>
    </message>
    <message>
        <source>Grid, active area</source>
        <translation>Gitter, aktive Fläche</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Guard band as a multiple of U</source>
        <translation>Schutzabstand als Vielfaches von U</translation>
    </message>
    <message>
        <source>Guard band, times U</source>
        <translation>Schutzabstand, mal U</translation>
    </message>
    <message>
        <source>Guided run</source>
        <translation>Geführter Durchgang</translation>
    </message>
    <message>
        <source>Heat sink</source>
        <translation>Wärmeableitung</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Hide Details...</source>
        <translation>Details ausblenden...</translation>
    </message>
    <message>
        <source>Histogram of the trials</source>
        <translation>Histogramm der Versuche</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Hold
[s]</source>
        <translation>Halten
[s]</translation>
    </message>
    <message>
        <source>Holding: watch the reading</source>
        <translation>Halten: Messwert beobachten</translation>
    </message>
    <message>
        <source>Home, Return</source>
        <translation>Pos1, Eingabe</translation>
    </message>
    <message>
        <source>How far the evidence falls behind that of the best cause by the Bayesian information criterion (BIC): chi-square of what is left, and a charge for each fitted size. 0 is the best; below 2 hardly a difference, from 6 on a strong one</source>
        <translation>Um wie viel die Evidenz hinter der der besten Ursache liegt, nach dem Bayesschen Informationskriterium (BIC): Chi-Quadrat dessen, was übrig bleibt, und ein Aufschlag für jede angepasste Größe. 0 ist am besten; unter 2 kaum ein Unterschied, ab 6 ein deutlicher</translation>
    </message>
    <message>
        <source>How far the input may be from its value, as stated or assumed</source>
        <translation>Wie weit die Eingangsgröße von ihrem Wert entfernt sein kann, angegeben oder angenommen</translation>
    </message>
    <message>
        <source>How its possible values are spread</source>
        <translation>Wie ihre möglichen Werte verteilt sind</translation>
    </message>
    <message>
        <source>How many copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many resistors can be switched, the fitted ones included</source>
        <translation>Wie viele Widerstände sich schalten lassen, die eingebauten mitgezählt</translation>
    </message>
    <message>
        <source>How many values of the series lie in between</source>
        <translation>Wie viele Werte der Reihe dazwischenliegen</translation>
    </message>
    <message>
        <source>How much the result changes when the input does, all else as it is</source>
        <translation>Um wie viel sich das Ergebnis mit der Eingangsgröße ändert, alles andere unverändert</translation>
    </message>
    <message>
        <source>How ordinary such a fault of such a size is, by common practice</source>
        <translation>Wie gewöhnlich ein solcher Fehler dieser Größe ist, nach allgemeiner Praxis</translation>
    </message>
    <message>
        <source>How probable so large a change would be if nothing had changed; below 0.05 it differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How probable so small a change would be if it were at the margin; below 0.05 it is shown to lie within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How probable the cause is among those that were tried, in percent: how well it explains the readings, by the Bayesian criterion, times how ordinary such a fault is. All causes sum to 100 % at most, and one that nobody thought of is not among them</source>
        <translation>Wie wahrscheinlich die Ursache unter den versuchten ist, in Prozent: wie gut sie die Messwerte erklärt, nach dem Bayesschen Kriterium, mal wie gewöhnlich ein solcher Fehler ist. Alle Ursachen zusammen ergeben höchstens 100 %, und eine, an die niemand gedacht hat, ist nicht darunter</translation>
    </message>
    <message>
        <source>How the file is read</source>
        <translation>Wie die Datei gelesen wird</translation>
    </message>
    <message>
        <source>How the levels match the plan</source>
        <translation>Wie die Plateaus zum Plan passen</translation>
    </message>
    <message>
        <source>How the numbers of the step come about</source>
        <translation>Wie die Zahlen der Stufe zustande kommen</translation>
    </message>
    <message>
        <source>Hysteresis</source>
        <translation>Umkehrspanne</translation>
    </message>
    <message>
        <source>I&amp;EEE 315: zigzags</source>
        <translation>I&amp;EEE 315: Zickzacklinien</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Ignore</source>
        <translation>Ignorieren</translation>
    </message>
    <message>
        <source>Import %1 channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import 1 channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a channel list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import resistors</source>
        <translation>Widerstände einlesen</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Einlesen…</translation>
    </message>
    <message>
        <source>In stock is %1. Choose it again to take it as it is there.</source>
        <translation>Im Bestand ist %1. Nochmals wählen, um ihn von dort zu übernehmen.</translation>
    </message>
    <message>
        <source>In words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Input resistance</source>
        <translation>Eingangswiderstand</translation>
    </message>
    <message>
        <source>Inputs</source>
        <translation>Eingangsgrößen</translation>
    </message>
    <message>
        <source>Instead of them: readings of open checks go too, since they were taken with other shunts. Undo brings all of it back.</source>
        <translation>Statt ihrer: Auch Messwerte offener Prüfungen entfallen, da sie mit anderen Shunts aufgenommen wurden. „Rückgängig“ bringt alles zurück.</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Interval of the budget</source>
        <translation>Intervall des Budgets</translation>
    </message>
    <message>
        <source>It is as the template has it already.</source>
        <translation>Es ist schon so, wie die Vorlage es hat.</translation>
    </message>
    <message>
        <source>It keeps the present set-up from now on. Refused where it has no reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lies %1 now. </source>
        <translation>Er liegt jetzt %1. </translation>
    </message>
    <message>
        <source>J</source>
        <translation>J</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Join spans</source>
        <translation>Abschnitte verbinden</translation>
    </message>
    <message>
        <source>Joins</source>
        <translation>Verbindet</translation>
    </message>
    <message>
        <source>Jumper to</source>
        <translation>Steckbrücke nach</translation>
    </message>
    <message>
        <source>Jumpers</source>
        <translation>Steckbrücken</translation>
    </message>
    <message>
        <source>Jumpers are laid in the table of jumpers below, for one shunt at a time.</source>
        <translation>Steckbrücken werden in der Tabelle der Steckbrücken unten gelegt, für je einen Shunt.</translation>
    </message>
    <message>
        <source>Jumpers of</source>
        <translation>Steckbrücken von</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>Keep running after edits</source>
        <translation>Nach Änderungen weiterrechnen</translation>
    </message>
    <message>
        <source>Keep the set-up that this check is judged by</source>
        <translation>Die Einrichtung festhalten, nach der diese Prüfung beurteilt wird</translation>
    </message>
    <message>
        <source>Keys…</source>
        <translation>Tasten…</translation>
    </message>
    <message>
        <source>Kinds of question</source>
        <translation>Aufgabenarten</translation>
    </message>
    <message>
        <source>La&amp;nguage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Language of the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest deviation as a share of its limit; above 100 % something is off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later less earlier, of the deviations from what each set-up makes one expect: what differs on purpose drops out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay out</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Lay out &amp;two-sided sequence</source>
        <translation>&amp;Zweiseitigen Ablauf anlegen</translation>
    </message>
    <message>
        <source>Lay out from a &amp;pattern…</source>
        <translation>Nach &amp;Muster anlegen…</translation>
    </message>
    <message>
        <source>Lay out sequence</source>
        <translation>Ablauf anlegen</translation>
    </message>
    <message>
        <source>Lay out two-sided sequence</source>
        <translation>Zweiseitigen Ablauf anlegen</translation>
    </message>
    <message>
        <source>Lay out up and down, repeats, random order and other patterns</source>
        <translation>Auf und ab, Wiederholungen, zufällige Folge und andere Muster anlegen</translation>
    </message>
    <message>
        <source>Lay out zero, positive shunts rising, zero, negative shunts rising, zero</source>
        <translation>Null, positive Shunts steigend, Null, negative Shunts steigend, Null anlegen</translation>
    </message>
    <message>
        <source>Lead </source>
        <translation>Leitung </translation>
    </message>
    <message>
        <source>Lead %1</source>
        <translation>Leitung %1</translation>
    </message>
    <message>
        <source>Lead %1 cannot be removed: without it the bridge is not connected. Enter 0 Ω to leave its resistance out, or break it on the page What if.</source>
        <translation>Leitung %1 lässt sich nicht entfernen: Ohne sie ist die Brücke nicht angeschlossen. 0 Ω eintragen, um ihren Widerstand wegzulassen, oder sie auf der Seite „Was wäre, wenn“ unterbrechen.</translation>
    </message>
    <message>
        <source>Lead %1 from length and size</source>
        <translation>Leitung %1 aus Länge und Querschnitt</translation>
    </message>
    <message>
        <source>Lead from copper wire</source>
        <translation>Leitung aus Kupferdraht</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translation>Führt zu</translation>
    </message>
    <message>
        <source>Leads warmer by</source>
        <translation>Leitungen wärmer um</translation>
    </message>
    <message>
        <source>Leads warmer than their resistance is stated for, by</source>
        <translation>Leitungen wärmer, als ihr Widerstand angegeben ist, um</translation>
    </message>
    <message>
        <source>Leads, each one way</source>
        <translation>Leitungen, je Richtung</translation>
    </message>
    <message>
        <source>Leads: </source>
        <translation>Leitungen: </translation>
    </message>
    <message>
        <source>Leak %1 over arm %2</source>
        <translation>Nebenschluss %1 über Zweig %2</translation>
    </message>
    <message>
        <source>Leak %1 to the structure from arm %2, %3</source>
        <translation>Nebenschluss %1 zur Struktur von Zweig %2, %3</translation>
    </message>
    <message>
        <source>Leak from %1 to the structure</source>
        <translation>Nebenschluss von %1 zur Struktur</translation>
    </message>
    <message>
        <source>Leak from arm %1 to the structure</source>
        <translation>Nebenschluss von Zweig %1 zur Struktur</translation>
    </message>
    <message>
        <source>Leak over %1</source>
        <translation>Nebenschluss über %1</translation>
    </message>
    <message>
        <source>Leak over arm</source>
        <translation>Nebenschluss über Zweig</translation>
    </message>
    <message>
        <source>Leak over arm %1</source>
        <translation>Nebenschluss über Zweig %1</translation>
    </message>
    <message>
        <source>Leak to structure of arm %1</source>
        <translation>Nebenschluss zur Struktur von Zweig %1</translation>
    </message>
    <message>
        <source>Leaks</source>
        <translation>Nebenschlüsse</translation>
    </message>
    <message>
        <source>Leaks at, 0 to 1 along arm %1</source>
        <translation>Nebenschluss bei, 0 bis 1 entlang Zweig %1</translation>
    </message>
    <message>
        <source>Least probability</source>
        <translation>Mindestwahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Least probability of conformity</source>
        <translation>Mindestwahrscheinlichkeit der Konformität</translation>
    </message>
    <message>
        <source>Leave recordings alone until watching goes on</source>
        <translation>Aufzeichnungen liegen lassen, bis weiter beobachtet wird</translation>
    </message>
    <message>
        <source>Left out, since the output does not move or cannot be predicted: %1.</source>
        <translation>Ausgelassen, da sich das Signal nicht ändert oder nicht vorherzusagen ist: %1.</translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation>Länge, einfach</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Stufenwerte</translation>
    </message>
    <message>
        <source>Levels a side</source>
        <translation>Stufenwerte je Seite</translation>
    </message>
    <message>
        <source>Levels for %1; the step of a level can be changed by hand</source>
        <translation>Plateaus für %1; die Stufe eines Plateaus lässt sich von Hand ändern</translation>
    </message>
    <message>
        <source>Levels found</source>
        <translation>Gefundene Plateaus</translation>
    </message>
    <message>
        <source>Levels of the chosen set</source>
        <translation>Stufenwerte des gewählten Satzes</translation>
    </message>
    <message>
        <source>Levels wanted</source>
        <translation>Gewünschte Stufenwerte</translation>
    </message>
    <message>
        <source>Levels, %1</source>
        <translation>Stufenwerte, %1</translation>
    </message>
    <message>
        <source>Lies between</source>
        <translation>Liegt zwischen</translation>
    </message>
    <message>
        <source>Lies there already: %1</source>
        <translation>Liegt schon dort: %1</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Limit of %1</source>
        <translation>Grenzwert von %1</translation>
    </message>
    <message>
        <source>Limit of zero return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit ±
[%1]</source>
        <translation>Grenzwert ±
[%1]</translation>
    </message>
    <message>
        <source>Limit, of expected reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>Limits (electrical chain)</source>
        <translation>Grenzwerte (elektrische Messkette)</translation>
    </message>
    <message>
        <source>Limits, of figures of merit too, and decision rule</source>
        <translation>Grenzwerte, auch der Kennwerte, und Entscheidungsregel</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Line %1, %2: %3</source>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Line that nonlinearity and combined error are measured from</source>
        <translation>Gerade, von der Linearitätsabweichung und zusammengesetzter Fehler gemessen werden</translation>
    </message>
    <message>
        <source>Linear interval confirmed to one digit of u: %1, at most %2 is allowed.</source>
        <translation>Lineares Intervall auf eine Stelle von u bestätigt: %1, höchstens %2 ist zulässig.</translation>
    </message>
    <message>
        <source>Linear interval not confirmed to one digit of u: %1, more than %2. Use the trials&apos; interval.</source>
        <translation>Lineares Intervall nicht auf eine Stelle von u bestätigt: %1, mehr als %2. Das Intervall der Versuche verwenden.</translation>
    </message>
    <message>
        <source>Linearised, then zero subtracted</source>
        <translation>Linearisiert, dann Null abgezogen</translation>
    </message>
    <message>
        <source>List View</source>
        <translation>Listenansicht</translation>
    </message>
    <message>
        <source>Lists of resistors (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Widerstandslisten (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Longest row of right answers: %1.</source>
        <translation>Längste Folge richtiger Antworten: %1.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Nochmals ansehen</translation>
    </message>
    <message>
        <source>Look at %1, all steps are read</source>
        <translation>%1 ansehen, alle Stufen sind abgelesen</translation>
    </message>
    <message>
        <source>Look in:</source>
        <translation>Suchen in:</translation>
    </message>
    <message>
        <source>Looking for what changed …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for what may be wrong …</source>
        <translation>Es wird gesucht, was nicht stimmen könnte …</translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>Made by</source>
        <translation>Hergestellt aus</translation>
    </message>
    <message>
        <source>Mains</source>
        <translation>Netz</translation>
    </message>
    <message>
        <source>Mains frequency</source>
        <translation>Netzfrequenz</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin of change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin of the zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin ±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Match again</source>
        <translation>Neu zuordnen</translation>
    </message>
    <message>
        <source>Match spans again</source>
        <translation>Abschnitte neu zuordnen</translation>
    </message>
    <message>
        <source>Match with the plan</source>
        <translation>Abgleich mit dem Plan</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittelwert</translation>
    </message>
    <message>
        <source>Mean square of the deviations, each as a share of its tolerance</source>
        <translation>Mittleres Quadrat der Abweichungen, jede als Anteil ihrer Toleranz</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured
[%1]</source>
        <translation>Gemessen
[%1]</translation>
    </message>
    <message>
        <source>Measured against simulated, and what is off</source>
        <translation>Gemessen über simuliert, und was abweicht</translation>
    </message>
    <message>
        <source>Measured change</source>
        <translation>Gemessene Änderung</translation>
    </message>
    <message>
        <source>Measured less expected change, both from the zero step</source>
        <translation>Gemessene minus erwartete Änderung, beide ab der Nullstufe</translation>
    </message>
    <message>
        <source>Measured over expected, of the latest check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured span less the expected one, as a share of the expected span.</source>
        <translation>Gemessene Spanne minus erwartete, als Anteil der erwarteten Spanne.</translation>
    </message>
    <message>
        <source>Measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Measuring input</source>
        <translation>Messeingang</translation>
    </message>
    <message>
        <source>Misfit</source>
        <translation>Restabweichung</translation>
    </message>
    <message>
        <source>More than %1 steps are not laid out: choose fewer repeats.</source>
        <translation>Mehr als %1 Stufen werden nicht angelegt: weniger Wiederholungen wählen.</translation>
    </message>
    <message>
        <source>Move jumper</source>
        <translation>Steckbrücke verschieben</translation>
    </message>
    <message>
        <source>Move leak</source>
        <translation>Nebenschluss versetzen</translation>
    </message>
    <message>
        <source>Move pin</source>
        <translation>Stift verschieben</translation>
    </message>
    <message>
        <source>Move shunt</source>
        <translation>Shunt versetzen</translation>
    </message>
    <message>
        <source>Move span</source>
        <translation>Abschnitt verschieben</translation>
    </message>
    <message>
        <source>Move step</source>
        <translation>Stufe verschieben</translation>
    </message>
    <message>
        <source>Move step &amp;down</source>
        <translation>Stufe nach &amp;unten</translation>
    </message>
    <message>
        <source>Move step &amp;up</source>
        <translation>Stufe nach &amp;oben</translation>
    </message>
    <message>
        <source>Move the pin down</source>
        <translation>Stift nach unten</translation>
    </message>
    <message>
        <source>Move the pin up</source>
        <translation>Stift nach oben</translation>
    </message>
    <message>
        <source>Move the step down</source>
        <translation>Stufe nach unten</translation>
    </message>
    <message>
        <source>Move the step up</source>
        <translation>Stufe nach oben</translation>
    </message>
    <message>
        <source>Move wiper</source>
        <translation>Schleifer bewegen</translation>
    </message>
    <message>
        <source>Moved: %1</source>
        <translation>Verschoben: %1</translation>
    </message>
    <message>
        <source>Moving %1</source>
        <translation>%1 wird versetzt</translation>
    </message>
    <message>
        <source>Moving average</source>
        <translation>Gleitender Mittelwert</translation>
    </message>
    <message>
        <source>Must read</source>
        <translation>Soll zeigen</translation>
    </message>
    <message>
        <source>My Computer</source>
        <translation>Computer</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the check</source>
        <translation>Name der Prüfung</translation>
    </message>
    <message>
        <source>Name of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name or group holds…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, date</source>
        <translation>Name, Datum</translation>
    </message>
    <message>
        <source>Names by a pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Names in line</source>
        <translation>Namen in Zeile</translation>
    </message>
    <message>
        <source>Neither filter nor sample rate is stated: see Acquisition in the set-up.</source>
        <translation>Weder Filter noch Abtastrate ist angegeben: siehe Erfassung in der Einrichtung.</translation>
    </message>
    <message>
        <source>Never narrower than</source>
        <translation>Nie schmaler als</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>New channels: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New shunt: %1</source>
        <translation>Neuer Shunt: %1</translation>
    </message>
    <message>
        <source>No balance network</source>
        <translation>Kein Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>No channel has levels that can be taken.</source>
        <translation>Kein Kanal hat Plateaus, die sich übernehmen lassen.</translation>
    </message>
    <message>
        <source>No channel in this document.</source>
        <translation>Kein Kanal in diesem Dokument.</translation>
    </message>
    <message>
        <source>No channel yet.</source>
        <translation>Noch kein Kanal.</translation>
    </message>
    <message>
        <source>No channel yet.
Add a channel, and its bridge, leads and shunts are drawn here.</source>
        <translation>Noch kein Kanal.
Nach dem Anlegen eines Kanals werden hier Brücke, Leitungen und Shunts gezeichnet.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to have its plan reviewed.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um seinen Plan durchzusehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to plan its wiring here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier seine Verdrahtung zu planen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see its budget here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier sein Budget zu sehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see its outcome here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier sein Ergebnis zu sehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see its working here.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um hier seinen Rechenweg zu sehen.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to see what an ohmmeter must read at its wiring.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um zu sehen, was ein Ohmmeter an seiner Verdrahtung zeigen muss.</translation>
    </message>
    <message>
        <source>No channel yet. Add a channel to try faults out on it.</source>
        <translation>Noch kein Kanal. Einen Kanal anlegen, um Fehler an ihm auszuprobieren.</translation>
    </message>
    <message>
        <source>No check is chosen. Ctrl+R takes readings from a recording.</source>
        <translation>Keine Prüfung gewählt. Strg+R übernimmt Messwerte aus einer Aufzeichnung.</translation>
    </message>
    <message>
        <source>No check yet. Add a check and enter its readings to see what may be wrong.</source>
        <translation>Noch keine Prüfung. Eine Prüfung anlegen und ihre Messwerte eintragen, um zu sehen, was nicht stimmen könnte.</translation>
    </message>
    <message>
        <source>No check yet. Add a check and enter its readings; the plan is drawn meanwhile.</source>
        <translation>Noch keine Prüfung. Eine Prüfung anlegen und ihre Messwerte eintragen; bis dahin wird der Plan gezeichnet.</translation>
    </message>
    <message>
        <source>No check yet. It takes two checks of the channel to see what changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column is named like a channel: choose a channel&apos;s column in the table.</source>
        <translation>Keine Spalte heißt wie ein Kanal: die Spalte eines Kanals in der Tabelle wählen.</translation>
    </message>
    <message>
        <source>No filter</source>
        <translation>Kein Filter</translation>
    </message>
    <message>
        <source>No held level was found at the cursor. Shift and drag draws a span by hand.</source>
        <translation>Am Cursor wurde kein gehaltenes Plateau gefunden. Umschalt und Ziehen zeichnet einen Abschnitt von Hand.</translation>
    </message>
    <message>
        <source>No jumpers yet.</source>
        <translation>Noch keine Steckbrücken.</translation>
    </message>
    <message>
        <source>No linearisation</source>
        <translation>Keine Linearisierung</translation>
    </message>
    <message>
        <source>No netlist: %1</source>
        <translation>Keine Netzliste: %1</translation>
    </message>
    <message>
        <source>No pins yet.
Add the pins of your connectors and say what each of them leads to,
or take the usual pins as a start and rename them.</source>
        <translation>Noch keine Stifte.
Die Stifte der Stecker anlegen und angeben, wohin jeder führt,
oder mit den üblichen Stiften beginnen und sie umbenennen.</translation>
    </message>
    <message>
        <source>No readings yet. Type what the ohmmeter shows into Measured; the faults that fit are ranked here.</source>
        <translation>Noch keine Messwerte. Eintippen, was das Ohmmeter bei „Gemessen“ zeigt; die passenden Fehler werden hier gereiht.</translation>
    </message>
    <message>
        <source>No report: %1</source>
        <translation>Kein Bericht: %1</translation>
    </message>
    <message>
        <source>No sheet: %1</source>
        <translation>Kein Blatt: %1</translation>
    </message>
    <message>
        <source>No shunt is made of a part of the stock with another value or due date.</source>
        <translation>Kein Shunt ist aus einem Widerstand des Bestands mit anderem Wert oder anderer Fälligkeit.</translation>
    </message>
    <message>
        <source>No spans yet</source>
        <translation>Noch keine Abschnitte</translation>
    </message>
    <message>
        <source>No step</source>
        <translation>Keine Stufe</translation>
    </message>
    <message>
        <source>No step chosen</source>
        <translation>Keine Stufe gewählt</translation>
    </message>
    <message>
        <source>No step chosen: all shunts open</source>
        <translation>Keine Stufe gewählt: alle Shunts offen</translation>
    </message>
    <message>
        <source>No step closes %1 yet: add it to a step of the sequence.</source>
        <translation>Noch keine Stufe schließt %1: in eine Stufe des Ablaufs aufnehmen.</translation>
    </message>
    <message>
        <source>No step is chosen. Choose one in the Sequence, or with the buttons above, to see how its numbers come about.</source>
        <translation>Keine Stufe gewählt. Eine im Ablauf oder mit den Tasten oben wählen, um zu sehen, wie ihre Zahlen zustande kommen.</translation>
    </message>
    <message>
        <source>No trials yet: only the normal curve of the budget is drawn. One run serves all steps in this scope.</source>
        <translation>Noch keine Versuche: Nur die Normalkurve des Budgets ist gezeichnet. Ein Lauf dient allen Stufen dieses Bereichs.</translation>
    </message>
    <message>
        <source>No trials: %1</source>
        <translation>Keine Versuche: %1</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Nobody relies on this reading while shunts are switched</source>
        <translation>Niemand verlässt sich auf diesen Messwert, während Shunts geschaltet werden</translation>
    </message>
    <message>
        <source>Nominal resistance of the bridge, as set</source>
        <translation>Nennwiderstand der Brücke, wie eingestellt</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>None of this applies to this channel.</source>
        <translation>Nichts davon trifft auf diesen Kanal zu.</translation>
    </message>
    <message>
        <source>None was wrong.</source>
        <translation>Keine war falsch.</translation>
    </message>
    <message>
        <source>Nonlinearity</source>
        <translation>Linearitätsabweichung</translation>
    </message>
    <message>
        <source>Normal curve of the budget</source>
        <translation>Normalkurve des Budgets</translation>
    </message>
    <message>
        <source>Not compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not everything was removed</source>
        <translation>Nicht alles wurde entfernt</translation>
    </message>
    <message>
        <source>Not exported: %1</source>
        <translation>Nicht exportiert: %1</translation>
    </message>
    <message>
        <source>Not opened: %1</source>
        <translation>Nicht geöffnet: %1</translation>
    </message>
    <message>
        <source>Not possible: arm %1 has such a leak already; two in parallel are entered as one resistance.</source>
        <translation>Nicht möglich: Zweig %1 hat schon einen solchen Nebenschluss; zwei parallele werden als ein Widerstand eingetragen.</translation>
    </message>
    <message>
        <source>Not possible: both ends would be on one point (%1), so the shunt would do nothing.</source>
        <translation>Nicht möglich: Beide Enden lägen auf einem Punkt (%1), der Shunt bewirkte also nichts.</translation>
    </message>
    <message>
        <source>Not possible: no lead is at %1, so there is nothing to exchange this one with.</source>
        <translation>Nicht möglich: An %1 ist keine Leitung, mit der diese zu tauschen wäre.</translation>
    </message>
    <message>
        <source>Not printed: the printer did not start.</source>
        <translation>Nicht gedruckt: Der Drucker ist nicht angelaufen.</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Nicht abgelesen</translation>
    </message>
    <message>
        <source>Not read (%1)</source>
        <translation>Nicht gelesen (%1)</translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>Nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>Not taken: %1.</source>
        <translation>Nicht übernommen: %1.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note at step %1</source>
        <translation>Notiz bei Stufe %1</translation>
    </message>
    <message>
        <source>Nothing found: range, uncertainty, zeros, levels, times, heat, polarity, leads and resistors of %1 look as they should. What nobody entered (a range, a grid&apos;s area, a rating) is not looked at.</source>
        <translation>Nichts gefunden: Bereich, Unsicherheit, Nullstufen, Stufenwerte, Zeiten, Wärme, Polarität, Leitungen und Widerstände von %1 sind, wie sie sein sollen. Was niemand eingetragen hat (ein Bereich, eine Gitterfläche, eine Belastbarkeit), wird nicht geprüft.</translation>
    </message>
    <message>
        <source>Nothing is stated for this input. Assumed: %1.</source>
        <translation>Zu dieser Eingangsgröße ist nichts angegeben. Angenommen: %1.</translation>
    </message>
    <message>
        <source>Nothing is tried out yet. Choose a fault or a change under Try out to see the readings of the plan with and without it. The document does not change.</source>
        <translation>Noch wird nichts ausprobiert. Unter „Ausprobieren“ einen Fehler oder eine Änderung wählen, um die Messwerte des Plans mit und ohne zu sehen. Das Dokument ändert sich nicht.</translation>
    </message>
    <message>
        <source>Nothing is watched.</source>
        <translation>Nichts wird beobachtet.</translation>
    </message>
    <message>
        <source>Nothing is wrong: every shunt lies where the plan says once its jumpers are laid.</source>
        <translation>Alles in Ordnung: Mit gelegten Steckbrücken liegt jeder Shunt dort, wo der Plan es sagt.</translation>
    </message>
    <message>
        <source>Nothing to check yet: there are no pins.</source>
        <translation>Noch nichts zu prüfen: Es gibt keine Stifte.</translation>
    </message>
    <message>
        <source>Nothing to edit</source>
        <translation>Nichts zu bearbeiten</translation>
    </message>
    <message>
        <source>Nothing was added</source>
        <translation>Nichts wurde angelegt</translation>
    </message>
    <message>
        <source>Nothing was aligned</source>
        <translation>Nichts wurde angeglichen</translation>
    </message>
    <message>
        <source>Nothing was duplicated</source>
        <translation>Nichts wurde verdoppelt</translation>
    </message>
    <message>
        <source>Nothing was moved</source>
        <translation>Nichts wurde versetzt</translation>
    </message>
    <message>
        <source>Nothing was removed</source>
        <translation>Nichts wurde entfernt</translation>
    </message>
    <message>
        <source>Number and label</source>
        <translation>Nummer und Bezeichnung</translation>
    </message>
    <message>
        <source>Number of questions</source>
        <translation>Anzahl der Aufgaben</translation>
    </message>
    <message>
        <source>Numbers from line</source>
        <translation>Zahlen ab Zeile</translation>
    </message>
    <message>
        <source>Numbers of the step</source>
        <translation>Zahlen der Stufe</translation>
    </message>
    <message>
        <source>OK</source>
        <translation>OK</translation>
    </message>
    <message>
        <source>Of each wire in use, sense leads among them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of expected reading</source>
        <translation>Vom erwarteten Messwert</translation>
    </message>
    <message>
        <source>Of gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the expected reading: arms, leads, shunts, amplifier and excitation, not the gauge factor. Decides pass or fail.</source>
        <translation>Vom erwarteten Messwert: Zweige, Leitungen, Shunts, Verstärker und Speisung, nicht der k-Faktor. Entscheidet über bestanden oder nicht.</translation>
    </message>
    <message>
        <source>Of the latest check against the one before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the latest check; sorted by it the worst come first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the simulated load, as read: the chain and the rated output. No verdict depends on it.</source>
        <translation>Von der simulierten Last, wie abgelesen: die Messkette und der Nennkennwert. Kein Urteil hängt davon ab.</translation>
    </message>
    <message>
        <source>Of the simulated strain, as read: the chain, gauge factor and temperature. No verdict depends on it.</source>
        <translation>Von der simulierten Dehnung, wie abgelesen: die Messkette, k-Faktor und Temperatur. Kein Urteil hängt davon ab.</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Ohmmeter</source>
        <translation>Ohmmeter</translation>
    </message>
    <message>
        <source>Ohmmeter ±</source>
        <translation>Ohmmeter ±</translation>
    </message>
    <message>
        <source>One file that a logger is adding to</source>
        <translation>Eine Datei, in die ein Logger noch schreibt</translation>
    </message>
    <message>
        <source>One more step: %1</source>
        <translation>Eine weitere Stufe: %1</translation>
    </message>
    <message>
        <source>One part of the span would have no number in it.</source>
        <translation>In einem Teil des Abschnitts wäre keine Zahl.</translation>
    </message>
    <message>
        <source>Only &amp;Bridge</source>
        <translation>Nur &amp;Brücke</translation>
    </message>
    <message>
        <source>Only &amp;Outcome</source>
        <translation>Nur &amp;Ergebnis</translation>
    </message>
    <message>
        <source>Only &amp;Recording</source>
        <translation>Nur Auf&amp;zeichnung</translation>
    </message>
    <message>
        <source>Only &amp;Sequence</source>
        <translation>Nur Ablau&amp;f</translation>
    </message>
    <message>
        <source>Only B&amp;udget</source>
        <translation>Nur B&amp;udget</translation>
    </message>
    <message>
        <source>Only files whose name fits, such as *.csv; several separated by blanks</source>
        <translation>Nur Dateien, deren Name passt, etwa *.csv; mehrere durch Leerzeichen getrennt</translation>
    </message>
    <message>
        <source>Only one check yet. Repeat the sequence as a second check to see what changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only those whose latest check is not closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only with a resistor or instrument past its due date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only with remarks that are not settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open a channel list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a list as CSV, or copy its cells in the spreadsheet and paste them here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open document</source>
        <translation>Dokument öffnen</translation>
    </message>
    <message>
        <source>Open the chosen recording where every guess can be changed</source>
        <translation>Die gewählte Aufzeichnung öffnen, wo sich alles Erkannte ändern lässt</translation>
    </message>
    <message>
        <source>Open this group</source>
        <translation>Diese Gruppe aufklappen</translation>
    </message>
    <message>
        <source>Opened %1.</source>
        <translation>%1 geöffnet.</translation>
    </message>
    <message>
        <source>Options &lt;&lt;</source>
        <translation>Optionen &lt;&lt;</translation>
    </message>
    <message>
        <source>Options &gt;&gt;</source>
        <translation>Optionen &gt;&gt;</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordnung</translation>
    </message>
    <message>
        <source>Order no.</source>
        <translation>Folge Nr.</translation>
    </message>
    <message>
        <source>Order of the date</source>
        <translation>Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>Order of the filter</source>
        <translation>Ordnung des Filters</translation>
    </message>
    <message>
        <source>Out of limits</source>
        <translation>Außerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Outcome of a shunt check</source>
        <translation>Ergebnis einer Shuntprüfung</translation>
    </message>
    <message>
        <source>Outcome: &amp;charts</source>
        <translation>Ergebnis: &amp;Diagramme</translation>
    </message>
    <message>
        <source>Outcome: &amp;table</source>
        <translation>Ergebnis: &amp;Tabelle</translation>
    </message>
    <message>
        <source>Outcome: &amp;working</source>
        <translation>Ergebnis: &amp;Rechenweg</translation>
    </message>
    <message>
        <source>Outcome: all &amp;figures</source>
        <translation>Ergebnis: alle &amp;Kennwerte</translation>
    </message>
    <message>
        <source>Outcome: c&amp;hange between checks</source>
        <translation>Ergebnis: Änderun&amp;g zwischen Prüfungen</translation>
    </message>
    <message>
        <source>Outcome: d&amp;iagnosis</source>
        <translation>Ergebnis: D&amp;iagnose</translation>
    </message>
    <message>
        <source>Output</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>Output
[mV/V]</source>
        <translation>Signal
[mV/V]</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overview of the channels</source>
        <translation>Übersicht der Kanäle</translation>
    </message>
    <message>
        <source>Own wires</source>
        <translation>Eigene Leitungen</translation>
    </message>
    <message>
        <source>P&amp;resent the view</source>
        <translation>Ansicht &amp;vorführen</translation>
    </message>
    <message>
        <source>PDF page (*.pdf)</source>
        <translation>PDF-Seite (*.pdf)</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>Pages of the bridge</source>
        <translation>Seiten der Brücke</translation>
    </message>
    <message>
        <source>Pages of the outcome</source>
        <translation>Seiten des Ergebnisses</translation>
    </message>
    <message>
        <source>Parent Directory</source>
        <translation>Übergeordneter Ordner</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part of the combined variance. Negative where a correlation takes variance away; all shares together are 100 %</source>
        <translation>Anteil an der kombinierten Varianz. Negativ, wo eine Korrelation Varianz wegnimmt; alle Anteile zusammen sind 100 %</translation>
    </message>
    <message>
        <source>Part of the page</source>
        <translation>Teil der Seite</translation>
    </message>
    <message>
        <source>Parts of one kind are edited together; select such ones alone.</source>
        <translation>Teile einer Art werden gemeinsam bearbeitet; nur solche auswählen.</translation>
    </message>
    <message>
        <source>Parts of this channel:</source>
        <translation>Teile dieses Kanals:</translation>
    </message>
    <message>
        <source>Passes up to limit less guard band, fails beyond limit plus guard band, cannot tell between.</source>
        <translation>Besteht bis Grenzwert minus Schutzabstand, besteht nicht über Grenzwert plus Schutzabstand, dazwischen nicht entscheidbar.</translation>
    </message>
    <message>
        <source>Passes when the true deviation is within the limit with at least this probability, fails when it is beyond with at least this probability, else cannot tell.</source>
        <translation>Besteht, wenn die wahre Abweichung mindestens mit dieser Wahrscheinlichkeit innerhalb des Grenzwerts liegt, besteht nicht, wenn sie mindestens mit dieser außerhalb liegt, sonst nicht entscheidbar.</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Paste: the clipboard holds no text.</source>
        <translation>Einfügen: Die Zwischenablage enthält keinen Text.</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Paused: what arrives now is taken up when watching goes on.</source>
        <translation>Angehalten: Was jetzt eintrifft, wird übernommen, sobald weiter beobachtet wird.</translation>
    </message>
    <message>
        <source>Percent of the misfit of the healthy channel that this cause takes away</source>
        <translation>Prozent der Restabweichung des fehlerfreien Kanals, die diese Ursache beseitigt</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>Picture of the polarity map</source>
        <translation>Bild der Polaritätskarte</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Stift</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>Pins; jumpers go with the plan</source>
        <translation>Stifte; Steckbrücken gehen mit dem Plan</translation>
    </message>
    <message>
        <source>Place along the arm, 0 to 1</source>
        <translation>Ort entlang des Zweigs, 0 bis 1</translation>
    </message>
    <message>
        <source>Place of the leak to structure along arm %1, 0 at its begin, 1 at its end</source>
        <translation>Ort des Nebenschlusses zur Struktur entlang Zweig %1, 0 am Anfang, 1 am Ende</translation>
    </message>
    <message>
        <source>Place of the wiper, 0 to 1</source>
        <translation>Ort des Schleifers, 0 bis 1</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan only: choose a check to see its outcome.</source>
        <translation>Nur Plan: eine Prüfung wählen, um ihr Ergebnis zu sehen.</translation>
    </message>
    <message>
        <source>Plan only: choose a check to see what may be wrong with it.</source>
        <translation>Nur Plan: eine Prüfung wählen, um zu sehen, was nicht stimmen könnte.</translation>
    </message>
    <message>
        <source>Point at a mark, or walk the steps with ← and →, to read its numbers.</source>
        <translation>Auf eine Marke zeigen oder mit ← und → durch die Stufen gehen, um die Zahlen zu lesen.</translation>
    </message>
    <message>
        <source>Point at a place to see what the shunt would do there; click it or press Enter to put it there.</source>
        <translation>Auf einen Ort zeigen, um zu sehen, was der Shunt dort bewirkte; Klick oder Eingabe setzt ihn dorthin.</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Poisson&apos;s ratio</source>
        <translation>Querdehnzahl</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Polarity map</source>
        <translation>Polaritätskarte</translation>
    </message>
    <message>
        <source>Polarity map, a row and a column for each point</source>
        <translation>Polaritätskarte, je Punkt eine Zeile und eine Spalte</translation>
    </message>
    <message>
        <source>Positions</source>
        <translation>Stellungen</translation>
    </message>
    <message>
        <source>Positions times step of each dial, the greatest step first: 10x10k 10x1k 10x100</source>
        <translation>Stellungen mal Schrittweite jedes Drehschalters, die größte Schrittweite zuerst: 10x10k 10x1k 10x100</translation>
    </message>
    <message>
        <source>Possible causes, the likeliest first</source>
        <translation>Mögliche Ursachen, die wahrscheinlichste zuerst</translation>
    </message>
    <message>
        <source>Potentiometer</source>
        <translation>Potentiometer</translation>
    </message>
    <message>
        <source>Potentiometer of the balance network</source>
        <translation>Potentiometer des Abgleichnetzwerks</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Practice, answers · %1 · seed %2</source>
        <translation>Übung, Lösungen · %1 · Startzahl %2</translation>
    </message>
    <message>
        <source>Practice, questions · %1 · seed %2</source>
        <translation>Übung, Aufgaben · %1 · Startzahl %2</translation>
    </message>
    <message>
        <source>Prediction band</source>
        <translation>Vorhersageband</translation>
    </message>
    <message>
        <source>Preferred values</source>
        <translation>Normwerte</translation>
    </message>
    <message>
        <source>Preferred values to buy</source>
        <translation>Zu kaufende Normwerte</translation>
    </message>
    <message>
        <source>Preferred values to buy (IEC 60063)</source>
        <translation>Zu kaufende Normwerte (IEC 60063)</translation>
    </message>
    <message>
        <source>Prepared by</source>
        <translation>Erstellt von</translation>
    </message>
    <message>
        <source>Presentation</source>
        <translation>Vorführung</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print s&amp;heets</source>
        <translation>Blätter &amp;drucken</translation>
    </message>
    <message>
        <source>Print sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>Print sheets</source>
        <translation>Blätter drucken</translation>
    </message>
    <message>
        <source>Print sheet…</source>
        <translation>Blatt drucken…</translation>
    </message>
    <message>
        <source>Printed the bridge.</source>
        <translation>Brücke gedruckt.</translation>
    </message>
    <message>
        <source>Progress of reading</source>
        <translation>Fortschritt des Lesens</translation>
    </message>
    <message>
        <source>Progress of the search</source>
        <translation>Fortschritt der Suche</translation>
    </message>
    <message>
        <source>Progress of the trials</source>
        <translation>Fortschritt der Versuche</translation>
    </message>
    <message>
        <source>Put pins for everything that the channel needs in place of the list, to be renamed</source>
        <translation>Statt der Liste Stifte für alles setzen, was der Kanal braucht, zum Umbenennen</translation>
    </message>
    <message>
        <source>Put the cursor on the level first.</source>
        <translation>Den Cursor zuerst auf das Plateau setzen.</translation>
    </message>
    <message>
        <source>Quality</source>
        <translation>Güte</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation>Aufgabe %1 von %2</translation>
    </message>
    <message>
        <source>Question %1 · %2</source>
        <translation>Aufgabe %1 · %2</translation>
    </message>
    <message>
        <source>Questions answered</source>
        <translation>Beantwortete Aufgaben</translation>
    </message>
    <message>
        <source>Questions, right and wrong</source>
        <translation>Aufgaben, richtig und falsch</translation>
    </message>
    <message>
        <source>R&amp;eport…</source>
        <translation>&amp;Bericht…</translation>
    </message>
    <message>
        <source>Range ±</source>
        <translation>Bereich ±</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Rated output</source>
        <translation>Nennkennwert</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Belastbarkeit</translation>
    </message>
    <message>
        <source>Ratiometric</source>
        <translation>Ratiometrisch</translation>
    </message>
    <message>
        <source>Re&amp;move check</source>
        <translation>Prüfung &amp;entfernen</translation>
    </message>
    <message>
        <source>Re&amp;port…</source>
        <translation>Be&amp;richt…</translation>
    </message>
    <message>
        <source>Re&amp;turn with a remark…</source>
        <translation>Mit Anmerkung &amp;zurückgeben…</translation>
    </message>
    <message>
        <source>Re&amp;view of the plan</source>
        <translation>&amp;Durchsicht des Plans</translation>
    </message>
    <message>
        <source>Rea&amp;ding</source>
        <translation>&amp;Messwert</translation>
    </message>
    <message>
        <source>Read &amp;again</source>
        <translation>Nochmals &amp;lesen</translation>
    </message>
    <message>
        <source>Read a list of resistors from a text file (CSV)</source>
        <translation>Eine Widerstandsliste aus einer Textdatei (CSV) lesen</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Nochmals lesen</translation>
    </message>
    <message>
        <source>Read it</source>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Nochmals lesen</translation>
    </message>
    <message>
        <source>Read it anyway</source>
        <translation>Trotzdem lesen</translation>
    </message>
    <message>
        <source>Read it as</source>
        <translation>Lesen als</translation>
    </message>
    <message>
        <source>Read now</source>
        <translation>Jetzt lesen</translation>
    </message>
    <message>
        <source>Read the chosen recording once more</source>
        <translation>Die gewählte Aufzeichnung noch einmal lesen</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Reading %1 … %2 %</source>
        <translation>Lesen von %1 … %2 %</translation>
    </message>
    <message>
        <source>Reading in %1</source>
        <translation>Messwert in %1</translation>
    </message>
    <message>
        <source>Reading in %1, and how you found it:</source>
        <translation>Messwert in %1 und der Weg dorthin:</translation>
    </message>
    <message>
        <source>Reading of the earlier check, from its own zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading of the later check, from its own zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading was stopped: nothing is taken from this file. &quot;Read again&quot; starts anew.</source>
        <translation>Das Lesen wurde abgebrochen: Aus dieser Datei wird nichts übernommen. „Nochmals lesen“ beginnt von vorn.</translation>
    </message>
    <message>
        <source>Reading with it, of an instrument zeroed after it came</source>
        <translation>Messwert damit, bei einem Gerät, das erst danach auf null gestellt wurde</translation>
    </message>
    <message>
        <source>Reading with it, of an instrument zeroed before it came</source>
        <translation>Messwert damit, bei einem Gerät, das vorher auf null gestellt wurde</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Readings depend on %1 of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings depend on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings do not depend on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings from a recording</source>
        <translation>Messwerte aus einer Aufzeichnung</translation>
    </message>
    <message>
        <source>Readings of open checks were dropped, since other shunts are closed now. Undo brings them back.</source>
        <translation>Messwerte offener Prüfungen sind entfallen, da jetzt andere Shunts geschlossen sind. „Rückgängig“ bringt sie zurück.</translation>
    </message>
    <message>
        <source>Readings of the ohmmeter</source>
        <translation>Messwerte des Ohmmeters</translation>
    </message>
    <message>
        <source>Readings without and with what is tried out</source>
        <translation>Messwerte ohne und mit dem, was ausprobiert wird</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lesen…</translation>
    </message>
    <message>
        <source>Reads
[%1]</source>
        <translation>Zeigt
[%1]</translation>
    </message>
    <message>
        <source>Reads in</source>
        <translation>Zeigt in</translation>
    </message>
    <message>
        <source>Ready: do the above, then start the wait</source>
        <translation>Bereit: das Obige tun, dann das Warten beginnen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>Recording &amp;strip under the Sequence</source>
        <translation>Aufzeichnung u&amp;nter dem Ablauf</translation>
    </message>
    <message>
        <source>Recording over time</source>
        <translation>Aufzeichnung über der Zeit</translation>
    </message>
    <message>
        <source>Recording to watch</source>
        <translation>Zu beobachtende Aufzeichnung</translation>
    </message>
    <message>
        <source>Recordings (*.csv *.txt *.tsv *.dat *.asc *.wav *.npy *.mat *.h5 *.hdf5 *.uff *.unv);;All files (*)</source>
        <translation>Aufzeichnungen (*.csv *.txt *.tsv *.dat *.asc *.wav *.npy *.mat *.h5 *.hdf5 *.uff *.unv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Recordings that are put there from now on</source>
        <translation>Aufzeichnungen, die von jetzt an dort abgelegt werden</translation>
    </message>
    <message>
        <source>Recordings that arrived</source>
        <translation>Eingetroffene Aufzeichnungen</translation>
    </message>
    <message>
        <source>Redo step %1</source>
        <translation>Stufe %1 wiederholen</translation>
    </message>
    <message>
        <source>Redoing this step. Before: %1 %2, kept until another reading is entered.</source>
        <translation>Diese Stufe wird wiederholt. Vorher: %1 %2, bleibt, bis ein anderer Messwert eingetragen ist.</translation>
    </message>
    <message>
        <source>Refused where a shunt or a pin would lose its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refused where an open check has readings, or a least limit is set: their numbers would mean something else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Anmerkung</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks that are not settled, of all checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1 parts</source>
        <translation>%1 Teile entfernen</translation>
    </message>
    <message>
        <source>Remove balance network</source>
        <translation>Abgleichnetzwerk entfernen</translation>
    </message>
    <message>
        <source>Remove channel</source>
        <translation>Kanal entfernen</translation>
    </message>
    <message>
        <source>Remove channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove check</source>
        <translation>Prüfung entfernen</translation>
    </message>
    <message>
        <source>Remove decade boxes</source>
        <translation>Widerstandsdekaden entfernen</translation>
    </message>
    <message>
        <source>Remove input resistance</source>
        <translation>Eingangswiderstand entfernen</translation>
    </message>
    <message>
        <source>Remove jumper</source>
        <translation>Steckbrücke entfernen</translation>
    </message>
    <message>
        <source>Remove leak</source>
        <translation>Nebenschluss entfernen</translation>
    </message>
    <message>
        <source>Remove my own</source>
        <translation>Eigenes entfernen</translation>
    </message>
    <message>
        <source>Remove pin</source>
        <translation>Stift entfernen</translation>
    </message>
    <message>
        <source>Remove preferred values</source>
        <translation>Normwerte entfernen</translation>
    </message>
    <message>
        <source>Remove resistors</source>
        <translation>Widerstände entfernen</translation>
    </message>
    <message>
        <source>Remove sense leads</source>
        <translation>Fühlerleitungen entfernen</translation>
    </message>
    <message>
        <source>Remove shunt</source>
        <translation>Shunt entfernen</translation>
    </message>
    <message>
        <source>Remove step</source>
        <translation>Stufe entfernen</translation>
    </message>
    <message>
        <source>Remove the channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the chosen decade boxes</source>
        <translation>Die gewählten Widerstandsdekaden entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen jumper</source>
        <translation>Die gewählte Steckbrücke entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen pin and the jumpers to it</source>
        <translation>Den gewählten Stift und die Steckbrücken zu ihm entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen ranges</source>
        <translation>Die gewählten Bereiche entfernen</translation>
    </message>
    <message>
        <source>Remove the chosen resistors; shunts keep their values</source>
        <translation>Die gewählten Widerstände entfernen; Shunts behalten ihre Werte</translation>
    </message>
    <message>
        <source>Remove the chosen shunt, from the steps too</source>
        <translation>Den gewählten Shunt entfernen, auch aus den Stufen</translation>
    </message>
    <message>
        <source>Remove the chosen step</source>
        <translation>Die gewählte Stufe entfernen</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Removed </source>
        <translation>Entfernt: </translation>
    </message>
    <message>
        <source>Rename channel</source>
        <translation>Kanal umbenennen</translation>
    </message>
    <message>
        <source>Rename channels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename decade box</source>
        <translation>Widerstandsdekade umbenennen</translation>
    </message>
    <message>
        <source>Rename pin</source>
        <translation>Stift umbenennen</translation>
    </message>
    <message>
        <source>Rename resistor</source>
        <translation>Widerstand umbenennen</translation>
    </message>
    <message>
        <source>Rename shunt</source>
        <translation>Shunt umbenennen</translation>
    </message>
    <message>
        <source>Rename step</source>
        <translation>Stufe umbenennen</translation>
    </message>
    <message>
        <source>Reopen check</source>
        <translation>Prüfung wieder öffnen</translation>
    </message>
    <message>
        <source>Repeatability</source>
        <translation>Wiederholbarkeit</translation>
    </message>
    <message>
        <source>Repeated: question %1 of %2</source>
        <translation>Wiederholt: Aufgabe %1 von %2</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Replaces the trials by themselves shortly after each change</source>
        <translation>Erneuert die Versuche kurz nach jeder Änderung von selbst</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>Residual from the fitted line over its own standard deviation, which the fit has made smaller: by the scatter of the residuals for a line without weights, else by the stated uncertainties. Beyond 2 either way it is seldom chance.</source>
        <translation>Residuum der angepassten Geraden durch seine eigene Standardabweichung, die durch die Anpassung kleiner wurde: nach der Streuung der Residuen bei einer Geraden ohne Gewichte, sonst nach den angegebenen Unsicherheiten. Jenseits von 2 in einer der Richtungen ist es selten Zufall.</translation>
    </message>
    <message>
        <source>Residual from the line</source>
        <translation>Residuum der Geraden</translation>
    </message>
    <message>
        <source>Residual over its standard deviation</source>
        <translation>Residuum durch seine Standardabweichung</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Resistance of each lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistance of the closed switch or relay, in series</source>
        <translation>Widerstand des geschlossenen Schalters oder Relais, in Reihe</translation>
    </message>
    <message>
        <source>Resistance of the map</source>
        <translation>Widerstand der Karte</translation>
    </message>
    <message>
        <source>Resistor from the wiper of the balance network to S+</source>
        <translation>Widerstand vom Schleifer des Abgleichnetzwerks zu S+</translation>
    </message>
    <message>
        <source>Resistor s&amp;tock</source>
        <translation>Widerstands&amp;bestand</translation>
    </message>
    <message>
        <source>Resistor stock</source>
        <translation>Widerstandsbestand</translation>
    </message>
    <message>
        <source>Resistor values from the stock</source>
        <translation>Widerstandswerte aus dem Bestand</translation>
    </message>
    <message>
        <source>Resistors</source>
        <translation>Widerstände</translation>
    </message>
    <message>
        <source>Resuming at step %1. The zero may have moved since the steps before it: redo them when in doubt.</source>
        <translation>Fortsetzung bei Stufe %1. Der Nullpunkt kann sich seit den Stufen davor verschoben haben: diese im Zweifel wiederholen.</translation>
    </message>
    <message>
        <source>Resuming at step %1: the steps before it have readings.</source>
        <translation>Fortsetzung bei Stufe %1: Die Stufen davor haben Messwerte.</translation>
    </message>
    <message>
        <source>Retry</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Return or a double click compares the check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reverse gauge signs</source>
        <translation>DMS-Vorzeichen umkehren</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Review of the plan</source>
        <translation>Durchsicht des Plans</translation>
    </message>
    <message>
        <source>Reviewed %1 of %2 channels: </source>
        <translation>%1 von %2 Kanälen durchgesehen: </translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <source>Right answers by kind</source>
        <translation>Richtige Antworten nach Art</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Richtig: %1</translation>
    </message>
    <message>
        <source>Rising</source>
        <translation>Steigend</translation>
    </message>
    <message>
        <source>Rows that are refused, and what else is to be known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows together by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Run trials</source>
        <translation>Versuche rechnen</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>S&amp;eed</source>
        <translation>&amp;Startzahl</translation>
    </message>
    <message>
        <source>S&amp;top safely</source>
        <translation>Sicher &amp;abbrechen</translation>
    </message>
    <message>
        <source>S&amp;ymbols</source>
        <translation>S&amp;ymbole</translation>
    </message>
    <message>
        <source>SPICE &amp;netlist of the step…</source>
        <translation>SPICE-Netz&amp;liste der Stufe…</translation>
    </message>
    <message>
        <source>SPICE netlist</source>
        <translation>SPICE-Netzliste</translation>
    </message>
    <message>
        <source>SPICE netlist (*.cir)</source>
        <translation>SPICE-Netzliste (*.cir)</translation>
    </message>
    <message>
        <source>STOP: the jumpers as planned would short the excitation and can destroy the supply, the leads or the bridge. The wiring must be corrected first (Alt+6). The run cannot begin before that.</source>
        <translation>HALT: Die geplanten Steckbrücken würden die Speisung kurzschließen und können Netzgerät, Leitungen oder Brücke zerstören. Zuerst ist die Verdrahtung zu berichtigen (Alt+6). Vorher kann der Durchgang nicht beginnen.</translation>
    </message>
    <message>
        <source>Same template</source>
        <translation>Gleiche Vorlage</translation>
    </message>
    <message>
        <source>Sample rate</source>
        <translation>Abtastrate</translation>
    </message>
    <message>
        <source>Sample rate, filter, mains</source>
        <translation>Abtastrate, Filter, Netz</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Abtastwerte</translation>
    </message>
    <message>
        <source>Samples: %1 in %2 columns. Lines read: %3, skipped: %4; cells without a number: %5.</source>
        <translation>Abtastwerte: %1 in %2 Spalten. Gelesene Zeilen: %3, übersprungen: %4; Zellen ohne Zahl: %5.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save as my own…</source>
        <translation>Als eigenes speichern…</translation>
    </message>
    <message>
        <source>Save document</source>
        <translation>Dokument speichern</translation>
    </message>
    <message>
        <source>Save pattern as my own</source>
        <translation>Muster als eigenes speichern</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>Scale to what is on view</source>
        <translation>An Sichtbares anpassen</translation>
    </message>
    <message>
        <source>Scale, channels and keys of the strip</source>
        <translation>Skala, Kanäle und Tasten des Streifens</translation>
    </message>
    <message>
        <source>Scaled unit</source>
        <translation>Skalierte Einheit</translation>
    </message>
    <message>
        <source>Scope</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Score on this computer, right of answered</source>
        <translation>Punktestand auf diesem Computer, richtig von beantwortet</translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation>Suche läuft…</translation>
    </message>
    <message>
        <source>Section or AWG</source>
        <translation>Querschnitt oder AWG</translation>
    </message>
    <message>
        <source>See that the reading is back at zero</source>
        <translation>Nachsehen, dass der Messwert wieder auf null ist</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>Seed of the random order: the same number gives the same order on every machine.</source>
        <translation>Startzahl der zufälligen Folge: Dieselbe Zahl ergibt auf jedem Rechner dieselbe Folge.</translation>
    </message>
    <message>
        <source>Select All</source>
        <translation>Alles auswählen</translation>
    </message>
    <message>
        <source>Select a part first.</source>
        <translation>Zuerst ein Teil auswählen.</translation>
    </message>
    <message>
        <source>Select a shunt to duplicate.</source>
        <translation>Einen Shunt zum Verdoppeln auswählen.</translation>
    </message>
    <message>
        <source>Select a&amp;ll</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>Select an arm first, or a leak or a shunt that lies at one.</source>
        <translation>Zuerst einen Zweig auswählen, oder einen Nebenschluss oder Shunt an einem.</translation>
    </message>
    <message>
        <source>Self-heating</source>
        <translation>Eigenerwärmung</translation>
    </message>
    <message>
        <source>Sense leads (six-wire)</source>
        <translation>Fühlerleitungen (Sechsleiter)</translation>
    </message>
    <message>
        <source>Sensitivity</source>
        <translation>Empfindlichkeit</translation>
    </message>
    <message>
        <source>Sensitivity times standard uncertainty, with its sign</source>
        <translation>Empfindlichkeit mal Standardunsicherheit, mit Vorzeichen</translation>
    </message>
    <message>
        <source>Sequence</source>
        <translation>Ablauf</translation>
    </message>
    <message>
        <source>Serial number of the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Series</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Set-ups differ in %1 things.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-ups differ in one thing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-ups: nothing differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Settle</source>
        <translation>Einschwingen</translation>
    </message>
    <message>
        <source>Settle
[s]</source>
        <translation>Einschw.
[s]</translation>
    </message>
    <message>
        <source>Settled to</source>
        <translation>Eingeschwungen auf</translation>
    </message>
    <message>
        <source>Settling follows from the filter and one sample interval, rounded up to 10 ms. A hold lasts one second at least, a whole number of mains periods, and 20 samples.</source>
        <translation>Das Einschwingen folgt aus dem Filter und einem Abtastintervall, auf 10 ms aufgerundet. Ein Halten dauert mindestens eine Sekunde, eine ganze Zahl Netzperioden und 20 Abtastwerte.</translation>
    </message>
    <message>
        <source>Settling: do not touch anything</source>
        <translation>Einschwingen: nichts berühren</translation>
    </message>
    <message>
        <source>Several &amp;copies…</source>
        <translation>Mehrere &amp;Kopien…</translation>
    </message>
    <message>
        <source>Several copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several copies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Share of
variance</source>
        <translation>Anteil an
Varianz</translation>
    </message>
    <message>
        <source>Share of a step that may be missing when a level counts as settled</source>
        <translation>Anteil einer Stufe, der fehlen darf, wenn ein Wert als eingeschwungen gilt</translation>
    </message>
    <message>
        <source>Share of trials in a bar, %</source>
        <translation>Anteil der Versuche in einem Balken, %</translation>
    </message>
    <message>
        <source>Shares, %</source>
        <translation>Anteile, %</translation>
    </message>
    <message>
        <source>Sheet to be printed (*.pdf)</source>
        <translation>Zu druckendes Blatt (*.pdf)</translation>
    </message>
    <message>
        <source>Sheets to be printed (*.pdf)</source>
        <translation>Zu druckende Blätter (*.pdf)</translation>
    </message>
    <message>
        <source>Sheets written to %1.</source>
        <translation>Blätter nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Shift and drag</source>
        <translation>Umschalt und Ziehen</translation>
    </message>
    <message>
        <source>Shift and drag draws one.</source>
        <translation>Umschalt und Ziehen zeichnet einen.</translation>
    </message>
    <message>
        <source>Shortest interval of the trials</source>
        <translation>Kürzestes Intervall der Versuche</translation>
    </message>
    <message>
        <source>Shortest, %1</source>
        <translation>Kürzestes, %1</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show &amp;hidden files</source>
        <translation>&amp;Versteckte Dateien zeigen</translation>
    </message>
    <message>
        <source>Show Details...</source>
        <translation>Details zeigen...</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Show channels that hold these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show channels that hold…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show channels whose name holds</source>
        <translation>Kanäle zeigen, deren Name dies enthält</translation>
    </message>
    <message>
        <source>Show channels whose name holds…</source>
        <translation>Kanäle zeigen, deren Name enthält…</translation>
    </message>
    <message>
        <source>Show channels whose name or group holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show in the views</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show span</source>
        <translation>Abschnitt zeigen</translation>
    </message>
    <message>
        <source>Show the shunt</source>
        <translation>Shunt zeigen</translation>
    </message>
    <message>
        <source>Shows a field for each part of what was guessed</source>
        <translation>Zeigt ein Feld für jeden Teil dessen, was erkannt wurde</translation>
    </message>
    <message>
        <source>Shows and hides what differs in the two set-ups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows the plan as it is now; the chosen check was judged by another set-up.</source>
        <translation>Zeigt den Plan, wie er jetzt ist; die gewählte Prüfung wurde nach einer anderen Einrichtung beurteilt.</translation>
    </message>
    <message>
        <source>Shows the step after (right arrow key)</source>
        <translation>Zeigt die Stufe danach (Pfeil rechts)</translation>
    </message>
    <message>
        <source>Shows the step before (left arrow key)</source>
        <translation>Zeigt die Stufe davor (Pfeil links)</translation>
    </message>
    <message>
        <source>Shunt</source>
        <translation>Shunt</translation>
    </message>
    <message>
        <source>Shunt </source>
        <translation>Shunt </translation>
    </message>
    <message>
        <source>Shunt %1. </source>
        <translation>Shunt %1. </translation>
    </message>
    <message>
        <source>Shunt check of the tailplane</source>
        <translation>Shuntprüfung des Höhenleitwerks</translation>
    </message>
    <message>
        <source>Shunt of the map</source>
        <translation>Shunt der Karte</translation>
    </message>
    <message>
        <source>Shunt over %1</source>
        <translation>Shunt über %1</translation>
    </message>
    <message>
        <source>Shunt whose jumpers are shown</source>
        <translation>Shunt, dessen Steckbrücken gezeigt werden</translation>
    </message>
    <message>
        <source>Shunts</source>
        <translation>Shunts</translation>
    </message>
    <message>
        <source>Shunts closed</source>
        <translation>Geschlossene Shunts</translation>
    </message>
    <message>
        <source>Shunts that the step closes</source>
        <translation>Shunts, die die Stufe schließt</translation>
    </message>
    <message>
        <source>Shunts with their parts, jumpers and uncertainties, and the sequence</source>
        <translation>Shunts mit ihren Widerständen, Steckbrücken und Unsicherheiten, und der Ablauf</translation>
    </message>
    <message>
        <source>Shuntwright %1
Plans and checks shunt calibrations of strain-gauge bridges.

Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
        <translation>Shuntwright %1
Plant und prüft Shuntkalibrierungen von DMS-Brücken.

Freie Software unter der GNU General Public License, Version 3 oder neuer. Ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>Shuntwright documents (*.%1)</source>
        <translation>Shuntwright-Dokumente (*.%1)</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Signal wires swapped</source>
        <translation>Signalleitungen vertauscht</translation>
    </message>
    <message>
        <source>Simulated</source>
        <translation>Simuliert</translation>
    </message>
    <message>
        <source>Simulated
[%1]</source>
        <translation>Simuliert
[%1]</translation>
    </message>
    <message>
        <source>Simulated load</source>
        <translation>Simulierte Last</translation>
    </message>
    <message>
        <source>Simulated strain</source>
        <translation>Simulierte Dehnung</translation>
    </message>
    <message>
        <source>Simulates
[%1]</source>
        <translation>Simuliert
[%1]</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Six-wire: sense leads</source>
        <translation>Sechsleiter: Fühlerleitungen</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Skip &amp;wait</source>
        <translation>Warten ü&amp;berspringen</translation>
    </message>
    <message>
        <source>Slope of the positive half less that of the negative half, as a share of the expected slope.</source>
        <translation>Steigung der positiven minus der negativen Hälfte, als Anteil der erwarteten Steigung.</translation>
    </message>
    <message>
        <source>Solid copper: %1. Stranded or tinned wire is higher; measure it where it matters.</source>
        <translation>Massives Kupfer: %1. Litze oder verzinnter Draht liegt höher; messen, wo es darauf ankommt.</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Span error</source>
        <translation>Spannenfehler</translation>
    </message>
    <message>
        <source>Span of no step: </source>
        <translation>Abschnitt ohne Stufe: </translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Teilen</translation>
    </message>
    <message>
        <source>Split span</source>
        <translation>Abschnitt teilen</translation>
    </message>
    <message>
        <source>St&amp;art the wait (Space)</source>
        <translation>&amp;Warten beginnen (Leertaste)</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a check and type or paste its readings</source>
        <translation>Eine Prüfung beginnen und ihre Messwerte eintippen oder einfügen</translation>
    </message>
    <message>
        <source>Start a check to run through them.</source>
        <translation>Zum Durchgehen eine Prüfung beginnen.</translation>
    </message>
    <message>
        <source>Start by itself at the next steps</source>
        <translation>Bei den nächsten Stufen von selbst beginnen</translation>
    </message>
    <message>
        <source>Start from</source>
        <translation>Beginnen mit</translation>
    </message>
    <message>
        <source>Start this check</source>
        <translation>Diese Prüfung beginnen</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>State of the wiring</source>
        <translation>Zustand der Verdrahtung</translation>
    </message>
    <message>
        <source>Stated as</source>
        <translation>Angegeben als</translation>
    </message>
    <message>
        <source>Stated for this channel.</source>
        <translation>Für diesen Kanal angegeben.</translation>
    </message>
    <message>
        <source>Status</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Std. uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>Step %1 has no uncertainty. %2</source>
        <translation>Stufe %1 hat keine Unsicherheit. %2</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Stufe %1 von %2</translation>
    </message>
    <message>
        <source>Step %1%2: %3</source>
        <translation>Stufe %1%2: %3</translation>
    </message>
    <message>
        <source>Step %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1: </source>
        <translation>Stufe %1: </translation>
    </message>
    <message>
        <source>Step %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1: %2 %3 %4, U = %5 %4 (k = %6, %7, %8)</source>
        <translation>Stufe %1: %2 %3 %4, U = %5 %4 (k = %6, %7, %8)</translation>
    </message>
    <message>
        <source>Step &amp;down</source>
        <translation>Schritt nach &amp;unten</translation>
    </message>
    <message>
        <source>Step after</source>
        <translation>Stufe danach</translation>
    </message>
    <message>
        <source>Step before</source>
        <translation>Stufe davor</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps are off by up to %1 %3, with this cause by up to %2 %3: </source>
        <translation>Stufen weichen um bis zu %1 %3 ab, mit dieser Ursache um bis zu %2 %3: </translation>
    </message>
    <message>
        <source>Steps as they will be</source>
        <translation>Stufen, wie sie sein werden</translation>
    </message>
    <message>
        <source>Steps of the check</source>
        <translation>Stufen der Prüfung</translation>
    </message>
    <message>
        <source>Steps of the earlier check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of the run</source>
        <translation>Stufen des Durchgangs</translation>
    </message>
    <message>
        <source>Steps that close several shunts stay together, with their labels</source>
        <translation>Stufen, die mehrere Shunts schließen, bleiben beisammen, mit ihren Bezeichnungen</translation>
    </message>
    <message>
        <source>Steps with a reading</source>
        <translation>Stufen mit Messwert</translation>
    </message>
    <message>
        <source>Steps without a reading are not judged: go back to them, or leave the check open.</source>
        <translation>Stufen ohne Messwert werden nicht beurteilt: zu ihnen zurückgehen oder die Prüfung offen lassen.</translation>
    </message>
    <message>
        <source>Stop safely</source>
        <translation>Sicher abbrechen</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <translation>Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>Stops trying this out</source>
        <translation>Probiert dies nicht mehr aus</translation>
    </message>
    <message>
        <source>Strain data</source>
        <translation>Dehnungsdaten</translation>
    </message>
    <message>
        <source>Structure is connected to</source>
        <translation>Struktur verbunden mit</translation>
    </message>
    <message>
        <source>Structure is on</source>
        <translation>Struktur liegt an</translation>
    </message>
    <message>
        <source>Student&apos;s t, ν = %1</source>
        <translation>Student-t, ν = %1</translation>
    </message>
    <message>
        <source>Su&amp;bmit for review…</source>
        <translation>Zur Durchsicht &amp;vorlegen…</translation>
    </message>
    <message>
        <source>Such a
fault is</source>
        <translation>Solcher
Fehler ist</translation>
    </message>
    <message>
        <source>Summar&amp;y</source>
        <translation>&amp;Zusammenfassung</translation>
    </message>
    <message>
        <source>Swap excitation</source>
        <translation>Speisung vertauschen</translation>
    </message>
    <message>
        <source>Swap signal wires</source>
        <translation>Signalleitungen vertauschen</translation>
    </message>
    <message>
        <source>Switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>Switch the excitation off before an ohmmeter touches the circuit, and take the channel out of service where something acts on its reading.</source>
        <translation>Die Speisung abschalten, bevor ein Ohmmeter die Schaltung berührt, und den Kanal außer Betrieb nehmen, wo etwas auf seinen Messwert reagiert.</translation>
    </message>
    <message>
        <source>Switch the excitation off before wiring or ohmmeter work.

A switched shunt moves the reading of a live control or safety channel: take such channels out of service first.

A passed shunt check says nothing about gauge bond, gauge factor, alignment or the strength of the article. Where a standard, a contract or the local code asks for a calibrated load or a traceable calibration, this check does not replace it.

Decisions stay with the responsible licensed or authorised person.</source>
        <translation>Vor Arbeiten an der Verdrahtung oder mit dem Ohmmeter die Speisung abschalten.

Ein geschalteter Shunt bewegt den Messwert eines laufenden Regel- oder Sicherheitskanals: Solche Kanäle zuerst außer Betrieb nehmen.

Eine bestandene Shuntprüfung sagt nichts über DMS-Klebung, k-Faktor, Ausrichtung oder die Festigkeit des Prüflings. Wo eine Norm, ein Vertrag oder örtliche Vorschriften eine kalibrierte Last oder eine rückführbare Kalibrierung verlangen, ersetzt diese Prüfung sie nicht.

Entscheidungen bleiben bei der verantwortlichen befugten Person.</translation>
    </message>
    <message>
        <source>Switched inside.</source>
        <translation>Innen geschaltet.</translation>
    </message>
    <message>
        <source>Symmetric interval of the trials</source>
        <translation>Symmetrisches Intervall der Versuche</translation>
    </message>
    <message>
        <source>Symmetric, %1</source>
        <translation>Symmetrisch, %1</translation>
    </message>
    <message>
        <source>Symmetry</source>
        <translation>Symmetrie</translation>
    </message>
    <message>
        <source>TP-{nn}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take all these choices back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take from its step</source>
        <translation>Der Stufe nehmen</translation>
    </message>
    <message>
        <source>Take over into the plan</source>
        <translation>In den Plan übernehmen</translation>
    </message>
    <message>
        <source>Take over: %1</source>
        <translation>Übernehmen: %1</translation>
    </message>
    <message>
        <source>Take readings from recording</source>
        <translation>Messwerte aus Aufzeichnung übernehmen</translation>
    </message>
    <message>
        <source>Take span from step %1</source>
        <translation>Abschnitt der Stufe %1 nehmen</translation>
    </message>
    <message>
        <source>Take stock values in %1</source>
        <translation>Bestandswerte in %1 übernehmen</translation>
    </message>
    <message>
        <source>Take up %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>Take up without asking what leaves no choice</source>
        <translation>Ohne Frage übernehmen, was keine Wahl lässt</translation>
    </message>
    <message>
        <source>Take usual pins</source>
        <translation>Übliche Stifte nehmen</translation>
    </message>
    <message>
        <source>Take value, certificate and due date of the stock&apos;s resistors into the shunts that are made of them</source>
        <translation>Wert, Kalibrierschein und Fälligkeit der Widerstände des Bestands in die Shunts übernehmen, die daraus bestehen</translation>
    </message>
    <message>
        <source>Taken over into the plan: %1. Undo brings the plan back.</source>
        <translation>In den Plan übernommen: %1. „Rückgängig“ bringt den Plan zurück.</translation>
    </message>
    <message>
        <source>Takes everything away that is tried out</source>
        <translation>Nimmt alles weg, was ausprobiert wird</translation>
    </message>
    <message>
        <source>Tell those who were told of the run: control and safety channels may come back into service</source>
        <translation>Denen Bescheid geben, die vom Durchgang wussten: Regel- und Sicherheitskanäle dürfen wieder in Betrieb</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Temperature coefficient of the gauge factor</source>
        <translation>Temperaturkoeffizient des k-Faktors</translation>
    </message>
    <message>
        <source>Temperature of the gauges during the check</source>
        <translation>Temperatur der DMS während der Prüfung</translation>
    </message>
    <message>
        <source>Temperature that the gauge factor is stated for</source>
        <translation>Temperatur, für die der k-Faktor angegeben ist</translation>
    </message>
    <message>
        <source>Test range</source>
        <translation>Prüfbereich</translation>
    </message>
    <message>
        <source>That which the instrument is set to follows where it was the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bridge %1 as a diamond: P+ above, P− below, S+ at the left, S− at the right. </source>
        <translation>Die Brücke %1 als Raute: P+ oben, P− unten, S+ links, S− rechts. </translation>
    </message>
    <message>
        <source>The bridge with all shunts open, not balanced.</source>
        <translation>Die Brücke mit allen Shunts offen, nicht abgeglichen.</translation>
    </message>
    <message>
        <source>The bridge with what is tried out</source>
        <translation>Die Brücke mit dem, was ausprobiert wird</translation>
    </message>
    <message>
        <source>The bridge, its leads and shunts (Ctrl+6)</source>
        <translation>Die Brücke, ihre Leitungen und Shunts (Strg+6)</translation>
    </message>
    <message>
        <source>The budget has no uncertainty to compare with.</source>
        <translation>Das Budget hat keine Unsicherheit zum Vergleich.</translation>
    </message>
    <message>
        <source>The channel has no shunts yet: add them in the table of shunts.</source>
        <translation>Der Kanal hat noch keine Shunts: in der Tabelle der Shunts anlegen.</translation>
    </message>
    <message>
        <source>The channel has no steps yet. Add steps to its sequence.</source>
        <translation>Der Kanal hat noch keine Stufen. Im Ablauf Stufen anlegen.</translation>
    </message>
    <message>
        <source>The channel has no steps yet; add steps to its sequence. </source>
        <translation>Der Kanal hat noch keine Stufen; im Ablauf Stufen anlegen. </translation>
    </message>
    <message>
        <source>The channel was changed since the dialog was opened: search again from there.</source>
        <translation>Der Kanal wurde geändert, seit der Dialog geöffnet ist: von dort neu suchen.</translation>
    </message>
    <message>
        <source>The check %1 is closed and keeps its readings: it cannot be run. Start a new one.</source>
        <translation>Die Prüfung %1 ist abgeschlossen und behält ihre Messwerte: Sie lässt sich nicht durchführen. Eine neue beginnen.</translation>
    </message>
    <message>
        <source>The check %1 is closed and keeps its spans. Reopen it first (menu Check, Close or reopen check).</source>
        <translation>Die Prüfung %1 ist abgeschlossen und behält ihre Abschnitte. Zuerst wieder öffnen (Menü Prüfung, Prüfung abschließen oder öffnen).</translation>
    </message>
    <message>
        <source>The check has no readings yet.</source>
        <translation>Die Prüfung hat noch keine Messwerte.</translation>
    </message>
    <message>
        <source>The check has no readings yet; the plan is drawn meanwhile.</source>
        <translation>Die Prüfung hat noch keine Messwerte; bis dahin wird der Plan gezeichnet.</translation>
    </message>
    <message>
        <source>The check is closed and keeps its spans. Reopen it first (menu Check, Close or reopen check).</source>
        <translation>Die Prüfung ist abgeschlossen und behält ihre Abschnitte. Zuerst wieder öffnen (Menü Prüfung, Prüfung abschließen oder öffnen).</translation>
    </message>
    <message>
        <source>The check was changed meanwhile.</source>
        <translation>Die Prüfung wurde inzwischen geändert.</translation>
    </message>
    <message>
        <source>The chosen cause</source>
        <translation>Die gewählte Ursache</translation>
    </message>
    <message>
        <source>The chosen channel again with the next names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chosen span and the next one as one</source>
        <translation>Der gewählte Abschnitt und der nächste als einer</translation>
    </message>
    <message>
        <source>The chosen span and what is around it</source>
        <translation>Der gewählte Abschnitt und seine Umgebung</translation>
    </message>
    <message>
        <source>The chosen span begins at the cursor</source>
        <translation>Der gewählte Abschnitt beginnt am Cursor</translation>
    </message>
    <message>
        <source>The chosen span ends at the cursor</source>
        <translation>Der gewählte Abschnitt endet am Cursor</translation>
    </message>
    <message>
        <source>The chosen span in two at the cursor</source>
        <translation>Der gewählte Abschnitt am Cursor in zwei</translation>
    </message>
    <message>
        <source>The chosen span is no more</source>
        <translation>Der gewählte Abschnitt entfällt</translation>
    </message>
    <message>
        <source>The chosen span is of no step</source>
        <translation>Der gewählte Abschnitt gehört zu keiner Stufe</translation>
    </message>
    <message>
        <source>The clipboard holds no text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The closed check does not have this step: it keeps the sequence it was judged by. Choose an earlier step, or show the plan alone.</source>
        <translation>Die abgeschlossene Prüfung hat diese Stufe nicht: Sie behält den Ablauf, nach dem sie beurteilt wurde. Eine frühere Stufe wählen oder nur den Plan zeigen.</translation>
    </message>
    <message>
        <source>The cursor is in a span. Put it where none is.</source>
        <translation>Der Cursor liegt in einem Abschnitt. Dorthin setzen, wo keiner ist.</translation>
    </message>
    <message>
        <source>The cursor is not within the chosen span.</source>
        <translation>Der Cursor liegt nicht im gewählten Abschnitt.</translation>
    </message>
    <message>
        <source>The date is no day of the calendar: write it as 2026-05-31, or leave it empty.</source>
        <translation>Das Datum ist kein Kalendertag: als 2026-05-31 schreiben oder leer lassen.</translation>
    </message>
    <message>
        <source>The document has changes that are not saved. Save them?</source>
        <translation>Das Dokument hat ungespeicherte Änderungen. Speichern?</translation>
    </message>
    <message>
        <source>The exact value beside the textbook&apos;s formulas</source>
        <translation>Der genaue Wert neben den Formeln des Lehrbuchs</translation>
    </message>
    <message>
        <source>The excitation is as planned: %1</source>
        <translation>Die Speisung ist wie geplant: %1</translation>
    </message>
    <message>
        <source>The excitation may stay at %1; switch it off before anybody works on the wiring</source>
        <translation>Die Speisung darf bei %1 bleiben; abschalten, bevor jemand an der Verdrahtung arbeitet</translation>
    </message>
    <message>
        <source>The file as it is now, with the same choices</source>
        <translation>Die Datei, wie sie jetzt ist, mit denselben Vorgaben</translation>
    </message>
    <message>
        <source>The file has %1.</source>
        <translation>Die Datei hat %1.</translation>
    </message>
    <message>
        <source>The first %1 cannot be told apart by the readings of this plan</source>
        <translation>Die ersten %1 lassen sich durch die Messwerte dieses Plans nicht unterscheiden</translation>
    </message>
    <message>
        <source>The first leaves more than the uncertainties explain.</source>
        <translation>Die erste lässt mehr übrig, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>The first step or the shunt that it is about</source>
        <translation>Die erste Stufe oder der Shunt, um den es geht</translation>
    </message>
    <message>
        <source>The guided run waits where it was left: shunts may still be closed. Alt+9 goes back to it; Stop safely there tells what to open.</source>
        <translation>Der geführte Durchgang wartet, wo er verlassen wurde: Shunts können noch geschlossen sein. Alt+9 führt zurück; „Sicher abbrechen“ sagt dort, was zu öffnen ist.</translation>
    </message>
    <message>
        <source>The input has a resistance already.</source>
        <translation>Der Eingang hat schon einen Widerstand.</translation>
    </message>
    <message>
        <source>The input has no resistance to be removed.</source>
        <translation>Der Eingang hat keinen Widerstand zum Entfernen.</translation>
    </message>
    <message>
        <source>The input takes current through %1. </source>
        <translation>Der Eingang nimmt Strom über %1. </translation>
    </message>
    <message>
        <source>The instrument cannot be removed.</source>
        <translation>Das Gerät lässt sich nicht entfernen.</translation>
    </message>
    <message>
        <source>The instrument measures S− against S+</source>
        <translation>Das Gerät misst S− gegen S+</translation>
    </message>
    <message>
        <source>The instrument measures the excitation too and divides by it, so that an excitation that is a little off cancels. Without it the error of the excitation is in every reading.</source>
        <translation>Das Gerät misst auch die Speisung und teilt durch sie, sodass sich eine leicht abweichende Speisung heraushebt. Ohne dies steckt der Fehler der Speisung in jedem Messwert.</translation>
    </message>
    <message>
        <source>The instrument reckons with %1.</source>
        <translation>Das Gerät rechnet mit %1.</translation>
    </message>
    <message>
        <source>The language changes when the program is started the next time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The levels of the present sequence</source>
        <translation>Die Stufenwerte des jetzigen Ablaufs</translation>
    </message>
    <message>
        <source>The likeliest first; a bracket holds those together that cannot be told apart</source>
        <translation>Die wahrscheinlichste zuerst; eine Klammer fasst zusammen, was sich nicht unterscheiden lässt</translation>
    </message>
    <message>
        <source>The line, drawn through the mean readings against the expected ones, that nonlinearity and combined error are measured from.</source>
        <translation>Die Gerade durch die mittleren Messwerte über den erwarteten, von der Linearitätsabweichung und zusammengesetzter Fehler gemessen werden.</translation>
    </message>
    <message>
        <source>The list, and what each of its columns is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ohmmeter is disconnected</source>
        <translation>Das Ohmmeter ist abgeklemmt</translation>
    </message>
    <message>
        <source>The pages Review (Alt+5) and Wiring (Alt+6) tell all of it.</source>
        <translation>Die Seiten Durchsicht (Alt+5) und Verdrahtung (Alt+6) sagen alles dazu.</translation>
    </message>
    <message>
        <source>The place is kept</source>
        <translation>Der Ort bleibt</translation>
    </message>
    <message>
        <source>The power cannot be worked out: %1</source>
        <translation>Die Leistung lässt sich nicht berechnen: %1</translation>
    </message>
    <message>
        <source>The questions of this set on paper, and the answers for the trainer</source>
        <translation>Die Aufgaben dieses Satzes auf Papier, und die Lösungen für die Lehrkraft</translation>
    </message>
    <message>
        <source>The readings of this check were not taken from a recording. Ctrl+R takes readings from one.</source>
        <translation>Die Messwerte dieser Prüfung stammen nicht aus einer Aufzeichnung. Strg+R übernimmt Messwerte aus einer.</translation>
    </message>
    <message>
        <source>The recording has no column of this channel.</source>
        <translation>Die Aufzeichnung hat keine Spalte dieses Kanals.</translation>
    </message>
    <message>
        <source>The recording is being read.</source>
        <translation>Die Aufzeichnung wird gelesen.</translation>
    </message>
    <message>
        <source>The recording of the check %1 could not be read: choose that check to see why.</source>
        <translation>Die Aufzeichnung der Prüfung %1 war nicht zu lesen: jene Prüfung wählen, um den Grund zu sehen.</translation>
    </message>
    <message>
        <source>The recording of the check is not on show, so its spans cannot be changed.</source>
        <translation>Die Aufzeichnung der Prüfung wird nicht gezeigt, daher lassen sich ihre Abschnitte nicht ändern.</translation>
    </message>
    <message>
        <source>The run resumes at step %1.</source>
        <translation>Der Durchgang wird bei Stufe %1 fortgesetzt.</translation>
    </message>
    <message>
        <source>The same by Akaike&apos;s information criterion (AIC), which charges less for a fitted size</source>
        <translation>Dasselbe nach Akaikes Informationskriterium (AIC), das eine angepasste Größe weniger belastet</translation>
    </message>
    <message>
        <source>The same seed gives the same trials, on every machine</source>
        <translation>Dieselbe Startzahl ergibt dieselben Versuche, auf jedem Rechner</translation>
    </message>
    <message>
        <source>The same seed with the same difficulty, kinds and number of questions gives the same questions on every computer: tell all four to the class.</source>
        <translation>Dieselbe Startzahl mit derselben Schwierigkeit, denselben Arten und derselben Anzahl ergibt auf jedem Rechner dieselben Aufgaben: der Klasse alle vier nennen.</translation>
    </message>
    <message>
        <source>The same set &amp;once more</source>
        <translation>Dieselben Aufgaben n&amp;och einmal</translation>
    </message>
    <message>
        <source>The same steps as a table</source>
        <translation>Dieselben Stufen als Tabelle</translation>
    </message>
    <message>
        <source>The seed is a whole number from 0 to %1, in digits alone.</source>
        <translation>Die Startzahl ist eine ganze Zahl von 0 bis %1, nur in Ziffern.</translation>
    </message>
    <message>
        <source>The sense leads cannot be removed: an end of %1 is at a sense terminal. Move it first.</source>
        <translation>Die Fühlerleitungen lassen sich nicht entfernen: Ein Ende von %1 liegt an einem Fühleranschluss. Zuerst dieses versetzen.</translation>
    </message>
    <message>
        <source>The set-up was changed: the trials made before are out of date and were cleared.</source>
        <translation>Die Einrichtung wurde geändert: Die früheren Versuche sind überholt und wurden gelöscht.</translation>
    </message>
    <message>
        <source>The signal with the levels found</source>
        <translation>Das Signal mit den gefundenen Plateaus</translation>
    </message>
    <message>
        <source>The source drives </source>
        <translation>Die Quelle treibt </translation>
    </message>
    <message>
        <source>The source&apos;s plus side is on P−</source>
        <translation>Die Plusseite der Quelle liegt an P−</translation>
    </message>
    <message>
        <source>The spans are %1 runs of the sequence. Nothing was changed: give the spans of one run to the steps by hand, or take the recording anew and choose the run.</source>
        <translation>Die Abschnitte sind %1 Durchläufe des Ablaufs. Nichts wurde geändert: die Abschnitte eines Durchlaufs von Hand den Stufen geben, oder die Aufzeichnung neu übernehmen und den Durchlauf wählen.</translation>
    </message>
    <message>
        <source>The spans do not fit the steps of the plan. Nothing was changed.</source>
        <translation>Die Abschnitte passen nicht zu den Stufen des Plans. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The spans fit the steps in %1 ways about as well. Nothing was changed: give them to the steps by hand.</source>
        <translation>Die Abschnitte passen auf %1 Arten etwa gleich gut zu den Stufen. Nichts wurde geändert: von Hand den Stufen geben.</translation>
    </message>
    <message>
        <source>The spans were matched with the steps.</source>
        <translation>Die Abschnitte wurden den Stufen zugeordnet.</translation>
    </message>
    <message>
        <source>The stock has %1. Shall the file replace the resistors and decade boxes that are there, or be added to them?</source>
        <translation>Der Bestand hat %1. Soll die Datei die vorhandenen Widerstände und Dekaden ersetzen oder zu ihnen hinzukommen?</translation>
    </message>
    <message>
        <source>The trials left this step out.</source>
        <translation>Die Versuche haben diese Stufe ausgelassen.</translation>
    </message>
    <message>
        <source>The two columns as bars: outline without the cause, filled with it</source>
        <translation>Die beiden Spalten als Balken: Umriss ohne die Ursache, gefüllt mit ihr</translation>
    </message>
    <message>
        <source>The unit that this column is taken to have; type another over it</source>
        <translation>Die Einheit, in der diese Spalte angenommen wird; zum Ändern eine andere eintippen</translation>
    </message>
    <message>
        <source>The whole recording</source>
        <translation>Die ganze Aufzeichnung</translation>
    </message>
    <message>
        <source>The whole score on this computer is cleared. This cannot be undone.</source>
        <translation>Der ganze Punktestand auf diesem Computer wird gelöscht. Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>The wiring of this step is wrong; lay no jumper before it is corrected:</source>
        <translation>Die Verdrahtung dieser Stufe ist falsch; keine Steckbrücke legen, bevor sie berichtigt ist:</translation>
    </message>
    <message>
        <source>There are no steps yet. Add steps to a sequence.</source>
        <translation>Noch keine Stufen. Im Ablauf Stufen anlegen.</translation>
    </message>
    <message>
        <source>There are sense leads already.</source>
        <translation>Fühlerleitungen sind schon da.</translation>
    </message>
    <message>
        <source>There is a span already where the drawing began. Begin beside it, or drag its edges.</source>
        <translation>Wo die Zeichnung begann, ist schon ein Abschnitt. Daneben beginnen oder seine Kanten ziehen.</translation>
    </message>
    <message>
        <source>There is no channel to apply to others.</source>
        <translation>Es gibt keinen Kanal, der auf andere anzuwenden wäre.</translation>
    </message>
    <message>
        <source>There is no channel to choose resistors for.</source>
        <translation>Es gibt keinen Kanal, für den Widerstände zu wählen wären.</translation>
    </message>
    <message>
        <source>There is no channel to copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no channel to duplicate.</source>
        <translation>Es gibt keinen Kanal zum Verdoppeln.</translation>
    </message>
    <message>
        <source>There is no channel to edit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no channel to lay a sequence out for.</source>
        <translation>Es gibt keinen Kanal, für den ein Ablauf anzulegen wäre.</translation>
    </message>
    <message>
        <source>There is no channel to remove.</source>
        <translation>Es gibt keinen Kanal zum Entfernen.</translation>
    </message>
    <message>
        <source>There is no channel yet: add a channel first.</source>
        <translation>Noch kein Kanal: zuerst einen Kanal anlegen.</translation>
    </message>
    <message>
        <source>There is no channel yet: add channels first.</source>
        <translation>Noch kein Kanal: zuerst Kanäle anlegen.</translation>
    </message>
    <message>
        <source>There is no channel yet: add or import some.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no channel.</source>
        <translation>Es gibt keinen Kanal.</translation>
    </message>
    <message>
        <source>There is no check to enter readings for: start one with &quot;New&quot;.</source>
        <translation>Es gibt keine Prüfung, für die Messwerte einzutragen wären: mit „Neu“ eine beginnen.</translation>
    </message>
    <message>
        <source>There is no check to remove.</source>
        <translation>Es gibt keine Prüfung zum Entfernen.</translation>
    </message>
    <message>
        <source>There is no level to lay out: choose other levels, sides, or shunts that move the output.</source>
        <translation>Es gibt keinen Stufenwert anzulegen: andere Stufenwerte, Seiten oder Shunts wählen, die das Signal bewegen.</translation>
    </message>
    <message>
        <source>There is no number in the joined span.</source>
        <translation>Im verbundenen Abschnitt ist keine Zahl.</translation>
    </message>
    <message>
        <source>There is no number in the span.</source>
        <translation>Im Abschnitt ist keine Zahl.</translation>
    </message>
    <message>
        <source>There is no second check of this channel to compare with.</source>
        <translation>Es gibt keine zweite Prüfung dieses Kanals zum Vergleichen.</translation>
    </message>
    <message>
        <source>There is no shunt to close yet. Add resistors and their places on the page Shunts, then lay out the sequence that closes them.</source>
        <translation>Noch kein Shunt zum Schließen. Auf der Seite Shunts Widerstände und ihre Orte anlegen, dann den Ablauf, der sie schließt.</translation>
    </message>
    <message>
        <source>There is no shunt to close: add shunts first.</source>
        <translation>Kein Shunt zum Schließen: zuerst Shunts anlegen.</translation>
    </message>
    <message>
        <source>There is no span after the chosen one to join it with.</source>
        <translation>Nach dem gewählten Abschnitt gibt es keinen zum Verbinden.</translation>
    </message>
    <message>
        <source>There is nothing to be read in this file.</source>
        <translation>In dieser Datei gibt es nichts zu lesen.</translation>
    </message>
    <message>
        <source>There is nothing to copy or export: %1</source>
        <translation>Es gibt nichts zu kopieren oder zu exportieren: %1</translation>
    </message>
    <message>
        <source>There is nothing to export: the stock has no resistors and no decade boxes.</source>
        <translation>Es gibt nichts zu exportieren: Der Bestand hat weder Widerstände noch Dekaden.</translation>
    </message>
    <message>
        <source>There is such a leak already.</source>
        <translation>Ein solcher Nebenschluss ist schon da.</translation>
    </message>
    <message>
        <source>There is this balance network already.</source>
        <translation>Dieses Abgleichnetzwerk ist schon da.</translation>
    </message>
    <message>
        <source>These faults are known and accepted by whoever is responsible</source>
        <translation>Diese Fehler sind bekannt und von der verantwortlichen Person hingenommen</translation>
    </message>
    <message>
        <source>These results are for what was asked before: search again to use a set.</source>
        <translation>Diese Ergebnisse gelten für das vorher Gefragte: neu suchen, um einen Satz zu verwenden.</translation>
    </message>
    <message>
        <source>These rows as CSV, as sorted and filtered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bridge is not offered with sense leads.</source>
        <translation>Diese Brücke wird nicht mit Fühlerleitungen angeboten.</translation>
    </message>
    <message>
        <source>This channel</source>
        <translation>Dieser Kanal</translation>
    </message>
    <message>
        <source>This check is closed and shows the set-up it was judged by: choose &quot;plan only&quot; or an open check to change the plan.</source>
        <translation>Diese Prüfung ist abgeschlossen und zeigt die Einrichtung, nach der sie beurteilt wurde: „nur Plan“ oder eine offene Prüfung wählen, um den Plan zu ändern.</translation>
    </message>
    <message>
        <source>This check is closed and shows the set-up it was judged by: choose &quot;plan only&quot; or an open check to state another uncertainty.</source>
        <translation>Diese Prüfung ist abgeschlossen und zeigt die Einrichtung, nach der sie beurteilt wurde: „nur Plan“ oder eine offene Prüfung wählen, um eine andere Unsicherheit anzugeben.</translation>
    </message>
    <message>
        <source>This check is closed and shows the set-up it was judged by: reopen it, or choose &quot;plan only&quot; or an open check.</source>
        <translation>Diese Prüfung ist abgeschlossen und zeigt die Einrichtung, nach der sie beurteilt wurde: wieder öffnen, oder „nur Plan“ oder eine offene Prüfung wählen.</translation>
    </message>
    <message>
        <source>This closes other shunts than the present sequence, or in another order: readings of open checks will be dropped. Close those checks first to keep them.</source>
        <translation>Dies schließt andere Shunts als der jetzige Ablauf oder in anderer Folge: Messwerte offener Prüfungen entfallen. Diese Prüfungen vorher abschließen, um sie zu behalten.</translation>
    </message>
    <message>
        <source>This column is worked out and cannot be edited.</source>
        <translation>Diese Spalte wird gerechnet und lässt sich nicht bearbeiten.</translation>
    </message>
    <message>
        <source>This column is worked out from the channel. Type what the ohmmeter shows into Measured.</source>
        <translation>Diese Spalte wird aus dem Kanal gerechnet. Was das Ohmmeter zeigt, bei „Gemessen“ eintippen.</translation>
    </message>
    <message>
        <source>This connection has no such terminal.</source>
        <translation>Diese Anschlussart hat keinen solchen Anschluss.</translation>
    </message>
    <message>
        <source>This resistor&apos;s calibration is overdue.</source>
        <translation>Die Kalibrierung dieses Widerstands ist überfällig.</translation>
    </message>
    <message>
        <source>This table is worked out: it can be copied, but takes no text.</source>
        <translation>Diese Tabelle wird gerechnet: Sie lässt sich kopieren, nimmt aber keinen Text an.</translation>
    </message>
    <message>
        <source>Thorough</source>
        <translation>Gründlich</translation>
    </message>
    <message>
        <source>Tick at least one channel whose levels match its plan.</source>
        <translation>Mindestens einen Kanal anhaken, dessen Plateaus zu seinem Plan passen.</translation>
    </message>
    <message>
        <source>Time from</source>
        <translation>Zeit aus</translation>
    </message>
    <message>
        <source>Time left</source>
        <translation>Restzeit</translation>
    </message>
    <message>
        <source>Times of every step</source>
        <translation>Zeiten jeder Stufe</translation>
    </message>
    <message>
        <source>Times written as</source>
        <translation>Zeiten geschrieben als</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>To [s]</source>
        <translation>Bis [s]</translation>
    </message>
    <message>
        <source>To confirm</source>
        <translation>Zur Bestätigung</translation>
    </message>
    <message>
        <source>To node</source>
        <translation>Knoten nach</translation>
    </message>
    <message>
        <source>To pin</source>
        <translation>Stift nach</translation>
    </message>
    <message>
        <source>To tell apart</source>
        <translation>Zur Unterscheidung</translation>
    </message>
    <message>
        <source>To which channels</source>
        <translation>Auf welche Kanäle</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>Tolerance ±</source>
        <translation>Toleranz ±</translation>
    </message>
    <message>
        <source>Took readings for %1 of %2 channels.</source>
        <translation>Messwerte für %1 von %2 Kanälen übernommen.</translation>
    </message>
    <message>
        <source>Took up %1: %2.</source>
        <translation>%1 übernommen: %2.</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Try out</source>
        <translation>Ausprobieren</translation>
    </message>
    <message>
        <source>Two-sided</source>
        <translation>Zweiseitig</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Type a number, or paste a column of numbers: their mean is taken</source>
        <translation>Eine Zahl eintippen oder eine Spalte von Zahlen einfügen: ihr Mittelwert gilt</translation>
    </message>
    <message>
        <source>Type the reading first, with its sign.</source>
        <translation>Zuerst den Messwert eintippen, mit Vorzeichen.</translation>
    </message>
    <message>
        <source>Typed resistance, a new shunt</source>
        <translation>Eingetippter Widerstand, ein neuer Shunt</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>U at most, of limit</source>
        <translation>U höchstens, vom Grenzwert</translation>
    </message>
    <message>
        <source>U of deviation</source>
        <translation>U der Abweichung</translation>
    </message>
    <message>
        <source>U of the deviation</source>
        <translation>U der Abweichung</translation>
    </message>
    <message>
        <source>U up to ±%1</source>
        <translation>U bis zu ±%1</translation>
    </message>
    <message>
        <source>U, %1
[%2]</source>
        <translation>U, %1
[%2]</translation>
    </message>
    <message>
        <source>Uncertainties</source>
        <translation>Unsicherheiten</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Unchanged within ± %1: %2 ± %3 %4 (95 %).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the bars</source>
        <translation>Einheit der Balken</translation>
    </message>
    <message>
        <source>Unit of the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit, factors, excitation, range, input, balance. A bridge of another template keeps its bridge factor, a transducer its scale.</source>
        <translation>Einheit, Faktoren, Speisung, Bereich, Eingang, Abgleich. Eine Brücke anderer Vorlage behält ihren Brückenfaktor, ein Aufnehmer seine Skalierung.</translation>
    </message>
    <message>
        <source>Units in line</source>
        <translation>Einheiten in Zeile</translation>
    </message>
    <message>
        <source>Units of columns</source>
        <translation>Einheiten der Spalten</translation>
    </message>
    <message>
        <source>Units per mV/V</source>
        <translation>Einheiten je mV/V</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Up to</source>
        <translation>Bis zu</translation>
    </message>
    <message>
        <source>Update shunts</source>
        <translation>Shunts erneuern</translation>
    </message>
    <message>
        <source>Update shunts from stock</source>
        <translation>Shunts aus dem Bestand erneuern</translation>
    </message>
    <message>
        <source>Use chosen resistors</source>
        <translation>Gewählte Widerstände verwenden</translation>
    </message>
    <message>
        <source>Use for all leads of this channel</source>
        <translation>Für alle Leitungen dieses Kanals verwenden</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>Verwendet von</translation>
    </message>
    <message>
        <source>Usual pins</source>
        <translation>Übliche Stifte</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Value of the input</source>
        <translation>Wert der Eingangsgröße</translation>
    </message>
    <message>
        <source>Value on the calibration certificate. A new one is entered with its U: 59.906k ± 0.6</source>
        <translation>Wert laut Kalibrierschein. Ein neuer wird mit seiner U eingetragen: 59,906k ± 0,6</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Values are edited in the channel&apos;s set-up and in the table of shunts.</source>
        <translation>Werte werden in der Einrichtung des Kanals und in der Tabelle der Shunts bearbeitet.</translation>
    </message>
    <message>
        <source>Values of %1</source>
        <translation>Werte von %1</translation>
    </message>
    <message>
        <source>Vector picture (*.svg)</source>
        <translation>Vektorbild (*.svg)</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Warning: </source>
        <translation>Warnung: </translation>
    </message>
    <message>
        <source>Watch a folder…</source>
        <translation>Ordner beobachten…</translation>
    </message>
    <message>
        <source>Watch a recording…</source>
        <translation>Aufzeichnung beobachten…</translation>
    </message>
    <message>
        <source>Watched recordings</source>
        <translation>Beobachtete Aufzeichnungen</translation>
    </message>
    <message>
        <source>Watching.</source>
        <translation>Es wird beobachtet.</translation>
    </message>
    <message>
        <source>Weight,
%</source>
        <translation>Gewicht,
%</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a fault would do to the readings (Ctrl+8)</source>
        <translation>Was ein Fehler an den Messwerten bewirkte (Strg+8)</translation>
    </message>
    <message>
        <source>What a pin leads to is said in the table of pins above.</source>
        <translation>Wohin ein Stift führt, steht in der Tabelle der Stifte oben.</translation>
    </message>
    <message>
        <source>What a shunt would do at every place (Ctrl+7)</source>
        <translation>Was ein Shunt an jedem Ort bewirkte (Strg+7)</translation>
    </message>
    <message>
        <source>What becomes of each channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What both tests together say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done with the drawing (menu key or Shift+F10)</source>
        <translation>Was sich mit der Zeichnung tun lässt (Menütaste oder Umschalt+F10)</translation>
    </message>
    <message>
        <source>What changed from one check to another, and why</source>
        <translation>Was sich von einer Prüfung zur anderen geändert hat, und warum</translation>
    </message>
    <message>
        <source>What changed physically</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What column %1 is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What counts</source>
        <translation>Was zählt</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What differs in the two set-ups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What every bridge has stays: %1.</source>
        <translation>Was jede Brücke hat, bleibt: %1.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>What happens to the present shunts</source>
        <translation>Was mit den jetzigen Shunts geschieht</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>What is drawn besides points and bars</source>
        <translation>Was außer Punkten und Balken gezeichnet wird</translation>
    </message>
    <message>
        <source>What is left of it when the cause is fitted, its offset free</source>
        <translation>Was davon bleibt, wenn die Ursache angepasst ist, mit freiem Nullpunkt</translation>
    </message>
    <message>
        <source>What is measured with all dials at 0</source>
        <translation>Was gemessen wird, wenn alle Drehschalter auf 0 stehen</translation>
    </message>
    <message>
        <source>What is stated about everything but shunts</source>
        <translation>Was über alles außer Shunts angegeben ist</translation>
    </message>
    <message>
        <source>What is tried out</source>
        <translation>Was ausprobiert wird</translation>
    </message>
    <message>
        <source>What is wrong with the wiring</source>
        <translation>Was an der Verdrahtung falsch ist</translation>
    </message>
    <message>
        <source>What may be wrong</source>
        <translation>Was nicht stimmen könnte</translation>
    </message>
    <message>
        <source>What may be wrong, refitted through the network of the bridge, with its standard uncertainty</source>
        <translation>Was nicht stimmen könnte, durch das Netzwerk der Brücke neu angepasst, mit seiner Standardunsicherheit</translation>
    </message>
    <message>
        <source>What mends it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What reading</source>
        <translation>Welcher Messwert</translation>
    </message>
    <message>
        <source>What the bars show</source>
        <translation>Was die Balken zeigen</translation>
    </message>
    <message>
        <source>What the cause leaves of each step&apos;s deviation</source>
        <translation>Was die Ursache von der Abweichung jeder Stufe übrig lässt</translation>
    </message>
    <message>
        <source>What the channels belong with; empty takes them out of their groups.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the chosen place would do</source>
        <translation>Was der gewählte Ort bewirkte</translation>
    </message>
    <message>
        <source>What the keys and the mouse do here</source>
        <translation>Was Tasten und Maus hier tun</translation>
    </message>
    <message>
        <source>What the map shows</source>
        <translation>Was die Karte zeigt</translation>
    </message>
    <message>
        <source>What the prediction depends on</source>
        <translation>Wovon die Vorhersage abhängt</translation>
    </message>
    <message>
        <source>What there is to make shunts of: add it here, paste it from a spreadsheet, or import a file.</source>
        <translation>Woraus sich Shunts machen lassen: hier anlegen, aus einer Tabellenkalkulation einfügen oder aus einer Datei einlesen.</translation>
    </message>
    <message>
        <source>What to apply</source>
        <translation>Was anzuwenden ist</translation>
    </message>
    <message>
        <source>What to edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What was found, with its numbers</source>
        <translation>Was gefunden wurde, mit den Zahlen dazu</translation>
    </message>
    <message>
        <source>What was not read</source>
        <translation>Was nicht gelesen wurde</translation>
    </message>
    <message>
        <source>What you type in the other columns of a row is stated; empty its uncertainty to assume it again.</source>
        <translation>Was in den anderen Spalten einer Zeile eingetippt wird, gilt als angegeben; die Unsicherheit leeren, um sie wieder anzunehmen.</translation>
    </message>
    <message>
        <source>What, and by which formula</source>
        <translation>Was, und nach welcher Formel</translation>
    </message>
    <message>
        <source>Wheel, + and −</source>
        <translation>Mausrad, + und −</translation>
    </message>
    <message>
        <source>When the instrument was zeroed</source>
        <translation>Wann das Gerät auf null gestellt wurde</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where a channel is not ticked, its row says why.</source>
        <translation>Wo ein Kanal nicht angehakt ist, sagt seine Zeile, warum.</translation>
    </message>
    <message>
        <source>Whether the reading still has its sign, and whether the article&apos;s strain goes another way</source>
        <translation>Ob der Messwert sein Vorzeichen noch hat und ob die Dehnung des Prüflings anders wirkt</translation>
    </message>
    <message>
        <source>Whether the uncertainty is stated for this channel or the usual one of its kind</source>
        <translation>Ob die Unsicherheit für diesen Kanal angegeben ist oder die übliche ihrer Art</translation>
    </message>
    <message>
        <source>Which arm</source>
        <translation>Welcher Zweig</translation>
    </message>
    <message>
        <source>Which fault</source>
        <translation>Welcher Fehler</translation>
    </message>
    <message>
        <source>Which is larger</source>
        <translation>Was größer ist</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Welche Richtung</translation>
    </message>
    <message>
        <source>Whose plan it is</source>
        <translation>Wessen Plan es ist</translation>
    </message>
    <message>
        <source>Whose resistance is put to every place, one after the other</source>
        <translation>Dessen Widerstand an jeden Ort gesetzt wird, einen nach dem anderen</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Window of the moving average</source>
        <translation>Fenster des gleitenden Mittelwerts</translation>
    </message>
    <message>
        <source>Wiper to S+</source>
        <translation>Schleifer zu S+</translation>
    </message>
    <message>
        <source>Wiper, 0 to 1</source>
        <translation>Schleifer, 0 bis 1</translation>
    </message>
    <message>
        <source>Wire…</source>
        <translation>Draht…</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>With its usual numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With its wires and switch. Type another one to map it; placed, it is a new shunt</source>
        <translation>Mit seinen Leitungen und seinem Schalter. Einen anderen eintippen, um ihn zu kartieren; gesetzt ist er ein neuer Shunt</translation>
    </message>
    <message>
        <source>With minus without</source>
        <translation>Mit minus ohne</translation>
    </message>
    <message>
        <source>With the zero reading of %1 the instrument should show %2 %3.</source>
        <translation>Mit dem Nullwert %1 müsste das Gerät %2 %3 zeigen.</translation>
    </message>
    <message>
        <source>With their plans and checks; undo brings them back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With this
cause</source>
        <translation>Mit dieser
Ursache</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Innerhalb der Grenzwerte</translation>
    </message>
    <message>
        <source>Within limits, which lie beyond the axis</source>
        <translation>Innerhalb der Grenzwerte, die jenseits der Achse liegen</translation>
    </message>
    <message>
        <source>Within the limit passes, beyond it fails. The uncertainty U is shown, not used.</source>
        <translation>Innerhalb des Grenzwerts bestanden, außerhalb nicht. Die Unsicherheit U wird gezeigt, nicht verwendet.</translation>
    </message>
    <message>
        <source>Within the limit passes, beyond it fails; where U is larger than the share below, it cannot tell.</source>
        <translation>Innerhalb des Grenzwerts bestanden, außerhalb nicht; wo U größer ist als der Anteil unten, nicht entscheidbar.</translation>
    </message>
    <message>
        <source>Without</source>
        <translation>Ohne</translation>
    </message>
    <message>
        <source>Work out</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>Work out all</source>
        <translation>Alle berechnen</translation>
    </message>
    <message>
        <source>Work out all jumpers</source>
        <translation>Alle Steckbrücken berechnen</translation>
    </message>
    <message>
        <source>Work out jumpers</source>
        <translation>Steckbrücken berechnen</translation>
    </message>
    <message>
        <source>Work out the jumpers of every shunt of the channel</source>
        <translation>Die Steckbrücken jedes Shunts des Kanals berechnen</translation>
    </message>
    <message>
        <source>Work out the jumpers that lay this shunt where the plan says</source>
        <translation>Die Steckbrücken berechnen, die diesen Shunt dorthin legen, wo der Plan es sagt</translation>
    </message>
    <message>
        <source>Work the resistance out from length and size of a copper wire</source>
        <translation>Den Widerstand aus Länge und Querschnitt eines Kupferdrahts berechnen</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Working of the chosen step</source>
        <translation>Rechenweg der gewählten Stufe</translation>
    </message>
    <message>
        <source>Working out the hash by which the file is known again; then the readings are taken.</source>
        <translation>Die Prüfsumme wird berechnet, an der die Datei wiedererkannt wird; dann werden die Messwerte übernommen.</translation>
    </message>
    <message>
        <source>Working out what must be read…</source>
        <translation>Es wird berechnet, was anzuzeigen ist…</translation>
    </message>
    <message>
        <source>Worst step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write pins, jumpers with boxes to tick, drawings and cautions as PDF</source>
        <translation>Stifte, Steckbrücken mit Kästchen zum Abhaken, Zeichnungen und Sicherheitshinweise als PDF schreiben</translation>
    </message>
    <message>
        <source>Write resistors and decade boxes to a text file (CSV); ranges of preferred values are not in it</source>
        <translation>Widerstände und Dekaden in eine Textdatei (CSV) schreiben; Normwertbereiche sind nicht darin</translation>
    </message>
    <message>
        <source>Write what must be read in each state, with room for what is read, as PDF</source>
        <translation>Was in jedem Zustand anzuzeigen ist, mit Platz für das Abgelesene, als PDF schreiben</translation>
    </message>
    <message>
        <source>Writes it into the channel; undo brings the plan back</source>
        <translation>Schreibt es in den Kanal; „Rückgängig“ bringt den Plan zurück</translation>
    </message>
    <message>
        <source>Writing the report</source>
        <translation>Bericht wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the sheet</source>
        <translation>Blatt wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the sheets</source>
        <translation>Blätter werden geschrieben</translation>
    </message>
    <message>
        <source>Wrote %1 rows to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrote %1.</source>
        <translation>%1 geschrieben.</translation>
    </message>
    <message>
        <source>Y</source>
        <translation>Y</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero after every level</source>
        <translation>Null nach jedem Stufenwert</translation>
    </message>
    <message>
        <source>Zero change, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero reading farthest from the first one, less the first, as a share of the greatest expected reading.</source>
        <translation>Nullwert, der vom ersten am weitesten entfernt ist, minus diesem, als Anteil des größten erwarteten Messwerts.</translation>
    </message>
    <message>
        <source>Zero reading, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zero return, of greatest</source>
        <translation>Nullpunktrückkehr, vom größten</translation>
    </message>
    <message>
        <source>Zero shift</source>
        <translation>Nullpunktverschiebung</translation>
    </message>
    <message>
        <source>Zero state: all shunts open, no jumper laid, no load on the structure</source>
        <translation>Nullzustand: alle Shunts offen, keine Steckbrücke gelegt, keine Last auf der Struktur</translation>
    </message>
    <message>
        <source>Zero subtracted, then linearised</source>
        <translation>Null abgezogen, dann linearisiert</translation>
    </message>
    <message>
        <source>Zeroed after it came</source>
        <translation>Danach genullt</translation>
    </message>
    <message>
        <source>Zeroed before it came</source>
        <translation>Vorher genullt</translation>
    </message>
    <message>
        <source>Zeroed before it came, the instrument shows the jump of the zero in every reading</source>
        <translation>Vorher genullt zeigt das Gerät den Sprung des Nullpunkts in jedem Messwert</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Verklei&amp;nern</translation>
    </message>
    <message>
        <source>a leak</source>
        <translation>ein Nebenschluss</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a new channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pin that is not in the list</source>
        <translation>ein Stift, der nicht in der Liste steht</translation>
    </message>
    <message>
        <source>above the usual</source>
        <translation>über dem Üblichen</translation>
    </message>
    <message>
        <source>acquisition</source>
        <translation>Erfassung</translation>
    </message>
    <message>
        <source>across arm %1</source>
        <translation>über Zweig %1</translation>
    </message>
    <message>
        <source>add: the level at the cursor</source>
        <translation>hinzufügen: das Plateau am Cursor</translation>
    </message>
    <message>
        <source>added to the present shunts and steps</source>
        <translation>zu den jetzigen Shunts und Stufen hinzu</translation>
    </message>
    <message>
        <source>after the file</source>
        <translation>nach der Datei</translation>
    </message>
    <message>
        <source>after the wait</source>
        <translation>nach dem Warten</translation>
    </message>
    <message>
        <source>all %1 plans</source>
        <translation>alle %1 Pläne</translation>
    </message>
    <message>
        <source>all bridges, leads with resistance, shunts at terminals</source>
        <translation>alle Brücken, Leitungen mit Widerstand, Shunts an Anschlüssen</translation>
    </message>
    <message>
        <source>all channels of this recording, or one</source>
        <translation>alle Kanäle dieser Aufzeichnung oder einer</translation>
    </message>
    <message>
        <source>all open checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all points</source>
        <translation>alle Punkte</translation>
    </message>
    <message>
        <source>all shunts open</source>
        <translation>alle Shunts offen</translation>
    </message>
    <message>
        <source>an arm</source>
        <translation>ein Zweig</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>and %1 more cells</source>
        <translation>und %1 weitere Zellen</translation>
    </message>
    <message>
        <source>and %1 more lines</source>
        <translation>und %1 weitere Zeilen</translation>
    </message>
    <message>
        <source>any change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arcsine</source>
        <translation>Arkussinus</translation>
    </message>
    <message>
        <source>arm </source>
        <translation>Zweig </translation>
    </message>
    <message>
        <source>arm %1</source>
        <translation>Zweig %1</translation>
    </message>
    <message>
        <source>arm %1 carries </source>
        <translation>Zweig %1 führt </translation>
    </message>
    <message>
        <source>arms</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>arms </source>
        <translation>Zweige </translation>
    </message>
    <message>
        <source>as guessed</source>
        <translation>wie erkannt</translation>
    </message>
    <message>
        <source>as on the sheet</source>
        <translation>wie auf dem Blatt</translation>
    </message>
    <message>
        <source>as share of the level</source>
        <translation>als Anteil des Stufenwerts</translation>
    </message>
    <message>
        <source>as share of the limit</source>
        <translation>als Anteil des Grenzwerts</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>assumed: %1</source>
        <translation>angenommen: %1</translation>
    </message>
    <message>
        <source>at the article</source>
        <translation>am Prüfling</translation>
    </message>
    <message>
        <source>balance network</source>
        <translation>Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>being written</source>
        <translation>wird geschrieben</translation>
    </message>
    <message>
        <source>below the usual</source>
        <translation>unter dem Üblichen</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>bridge, unshunted</source>
        <translation>Brücke, ohne Shunt</translation>
    </message>
    <message>
        <source>budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>by bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>c: sensitivity, by how much the result changes for one unit of the input. u: standard uncertainty. k: coverage factor. U: expanded uncertainty.</source>
        <translation>c: Empfindlichkeit, um wie viel sich das Ergebnis je Einheit der Eingangsgröße ändert. u: Standardunsicherheit. k: Erweiterungsfaktor. U: erweiterte Unsicherheit.</translation>
    </message>
    <message>
        <source>cannot be predicted</source>
        <translation>nicht vorherzusagen</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht zu lesen</translation>
    </message>
    <message>
        <source>cannot settle</source>
        <translation>schwingt nicht ein</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change </source>
        <translation>Änderung </translation>
    </message>
    <message>
        <source>change 0 mV/V</source>
        <translation>Änderung 0 mV/V</translation>
    </message>
    <message>
        <source>change −0.0000 mV/V, negative</source>
        <translation>Änderung −0,0000 mV/V, negativ</translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed within margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed: save it as your own to keep it</source>
        <translation>geändert: als eigenes speichern, um es zu behalten</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>ändert sich</translation>
    </message>
    <message>
        <source>changes; %1 readings of open checks are dropped</source>
        <translation>ändert sich; %1 Messwerte offener Prüfungen entfallen</translation>
    </message>
    <message>
        <source>changes; a reading of an open check is dropped</source>
        <translation>ändert sich; ein Messwert einer offenen Prüfung entfällt</translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
    <message>
        <source>choose a span, and show it</source>
        <translation>einen Abschnitt wählen und zeigen</translation>
    </message>
    <message>
        <source>choose a step</source>
        <translation>eine Stufe wählen</translation>
    </message>
    <message>
        <source>choose the span before, after</source>
        <translation>den Abschnitt davor, danach wählen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>closed check, not to be changed</source>
        <translation>abgeschlossene Prüfung, nicht zu ändern</translation>
    </message>
    <message>
        <source>collapsed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>completion resistor in the instrument</source>
        <translation>Ergänzungswiderstand im Gerät</translation>
    </message>
    <message>
        <source>control limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted &amp;from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decade box</source>
        <translation>Dekade</translation>
    </message>
    <message>
        <source>decade boxes</source>
        <translation>Dekaden</translation>
    </message>
    <message>
        <source>delete the span</source>
        <translation>den Abschnitt löschen</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>do not depend on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>draw a span</source>
        <translation>einen Abschnitt zeichnen</translation>
    </message>
    <message>
        <source>drop what is being dragged; choose none</source>
        <translation>das Gezogene fallen lassen; keinen wählen</translation>
    </message>
    <message>
        <source>effective degrees of freedom not used: correlated inputs contribute</source>
        <translation>effektive Freiheitsgrade nicht verwendet: korrelierte Eingangsgrößen tragen bei</translation>
    </message>
    <message>
        <source>effective degrees of freedom: %1</source>
        <translation>effektive Freiheitsgrade: %1</translation>
    </message>
    <message>
        <source>effective degrees of freedom: %1, cut down to %2 for k</source>
        <translation>effektive Freiheitsgrade: %1, für k auf %2 abgerundet</translation>
    </message>
    <message>
        <source>effective degrees of freedom: infinite</source>
        <translation>effektive Freiheitsgrade: unendlich</translation>
    </message>
    <message>
        <source>equal spacing</source>
        <translation>gleiche Abstände</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>expanded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>expected %1 ± %2 %3</source>
        <translation>erwartet %1 ± %2 %3</translation>
    </message>
    <message>
        <source>factor 1, offset 0: as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>from the clipboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full and quarter bridges, ideal leads, shunts right across an arm or over the whole bridge</source>
        <translation>Voll- und Viertelbrücken, ideale Leitungen, Shunts direkt über einem Zweig oder der ganzen Brücke</translation>
    </message>
    <message>
        <source>gain, after over before less 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give the span to a step</source>
        <translation>den Abschnitt einer Stufe geben</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>verschwunden</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>grid not known</source>
        <translation>Gitter nicht bekannt</translation>
    </message>
    <message>
        <source>h:min:s</source>
        <translation>h:min:s</translation>
    </message>
    <message>
        <source>instead of the present shunts and steps</source>
        <translation>statt der jetzigen Shunts und Stufen</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is read</source>
        <translation>wird gelesen</translation>
    </message>
    <message>
        <source>it</source>
        <translation>er</translation>
    </message>
    <message>
        <source>its ends differ by %1 and %2</source>
        <translation>seine Enden unterscheiden sich um %1 und %2</translation>
    </message>
    <message>
        <source>join with the next span</source>
        <translation>mit dem nächsten Abschnitt verbinden</translation>
    </message>
    <message>
        <source>k</source>
        <translation>k</translation>
    </message>
    <message>
        <source>lead </source>
        <translation>Leitung </translation>
    </message>
    <message>
        <source>leads</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>leak from arm %1 to the structure</source>
        <translation>Nebenschluss von Zweig %1 zur Struktur</translation>
    </message>
    <message>
        <source>leak over arm %1</source>
        <translation>Nebenschluss über Zweig %1</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>left spar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>match all spans with the steps again</source>
        <translation>alle Abschnitte den Stufen neu zuordnen</translation>
    </message>
    <message>
        <source>may be closed together, in parallel</source>
        <translation>dürfen gemeinsam geschlossen sein, parallel</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>measuring input</source>
        <translation>Messeingang</translation>
    </message>
    <message>
        <source>min:s</source>
        <translation>min:s</translation>
    </message>
    <message>
        <source>more than the uncertainties explain.</source>
        <translation>mehr, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>move it as a whole</source>
        <translation>ihn als Ganzes verschieben</translation>
    </message>
    <message>
        <source>move the edge by a sample; with Shift by a pixel</source>
        <translation>die Kante um einen Abtastwert verschieben; mit Umschalt um ein Pixel</translation>
    </message>
    <message>
        <source>move the edge of a span</source>
        <translation>die Kante eines Abschnitts verschieben</translation>
    </message>
    <message>
        <source>negative</source>
        <translation>negativ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>keine Änderung</translation>
    </message>
    <message>
        <source>no column belongs to a channel</source>
        <translation>keine Spalte gehört zu einem Kanal</translation>
    </message>
    <message>
        <source>no connector</source>
        <translation>kein Stecker</translation>
    </message>
    <message>
        <source>no document yet</source>
        <translation>noch kein Dokument</translation>
    </message>
    <message>
        <source>no leak</source>
        <translation>kein Nebenschluss</translation>
    </message>
    <message>
        <source>no limits yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no more than the uncertainties explain.</source>
        <translation>nicht mehr, als die Unsicherheiten erklären.</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>kein Messwert</translation>
    </message>
    <message>
        <source>no recording chosen</source>
        <translation>keine Aufzeichnung gewählt</translation>
    </message>
    <message>
        <source>no shunts yet: add them under Shunts</source>
        <translation>noch keine Shunts: unter „Shunts“ anlegen</translation>
    </message>
    <message>
        <source>no step</source>
        <translation>keine Stufe</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none near</source>
        <translation>keiner in der Nähe</translation>
    </message>
    <message>
        <source>none, or with the names</source>
        <translation>keine, oder bei den Namen</translation>
    </message>
    <message>
        <source>none; such as 59k9; 174.65k</source>
        <translation>keine; etwa 59k9; 174,65k</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>not all alike</source>
        <translation>nicht alle gleich</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not grouped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the list</source>
        <translation>nicht in der Liste</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>not yet worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>one typed in the table</source>
        <translation>ein in die Tabelle eingetippter</translation>
    </message>
    <message>
        <source>only terminals</source>
        <translation>nur Anschlüsse</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>our hall&apos;s usual</source>
        <translation>das Übliche unserer Halle</translation>
    </message>
    <message>
        <source>output </source>
        <translation>Signal </translation>
    </message>
    <message>
        <source>output 0 mV/V, no change</source>
        <translation>Signal 0 mV/V, keine Änderung</translation>
    </message>
    <message>
        <source>output not known</source>
        <translation>Signal nicht bekannt</translation>
    </message>
    <message>
        <source>output with all shunts open </source>
        <translation>Signal mit allen Shunts offen </translation>
    </message>
    <message>
        <source>output, mV/V</source>
        <translation>Signal, mV/V</translation>
    </message>
    <message>
        <source>over arm %1</source>
        <translation>über Zweig %1</translation>
    </message>
    <message>
        <source>over its standard deviation</source>
        <translation>durch seine Standardabweichung</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p
(beyond margin)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p
(different)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p (beyond margin)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p (different)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pan; also Shift with the wheel</source>
        <translation>verschieben; auch Umschalt mit dem Mausrad</translation>
    </message>
    <message>
        <source>pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>plan only</source>
        <translation>nur Plan</translation>
    </message>
    <message>
        <source>plan without a check</source>
        <translation>Plan ohne Prüfung</translation>
    </message>
    <message>
        <source>plugged in, excitation off</source>
        <translation>angesteckt, Speisung aus</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>positive</source>
        <translation>positiv</translation>
    </message>
    <message>
        <source>pot. </source>
        <translation>Pot. </translation>
    </message>
    <message>
        <source>pre-test</source>
        <translation>Vorprüfung</translation>
    </message>
    <message>
        <source>pre-test, post-test and so on</source>
        <translation>Vorprüfung, Nachprüfung und so weiter</translation>
    </message>
    <message>
        <source>put, move the cursor; over the lanes the mouse is it</source>
        <translation>den Cursor setzen, bewegen; über den Spuren ist es die Maus</translation>
    </message>
    <message>
        <source>range of preferred values</source>
        <translation>Normwertbereich</translation>
    </message>
    <message>
        <source>ranges of preferred values</source>
        <translation>Normwertbereiche</translation>
    </message>
    <message>
        <source>read %1 %2</source>
        <translation>abgelesen %1 %2</translation>
    </message>
    <message>
        <source>reading </source>
        <translation>Messwert </translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rechteckig</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>abgelehnt: %1</translation>
    </message>
    <message>
        <source>residual</source>
        <translation>Residuum</translation>
    </message>
    <message>
        <source>resistor</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>resistors</source>
        <translation>Widerstände</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rückleitung</translation>
    </message>
    <message>
        <source>row %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>scale to what is on view, or to all</source>
        <translation>an Sichtbares oder an alles anpassen</translation>
    </message>
    <message>
        <source>scaled unit</source>
        <translation>skalierte Einheit</translation>
    </message>
    <message>
        <source>settle %1 s, hold %2 s</source>
        <translation>Einschwingen %1 s, Halten %2 s</translation>
    </message>
    <message>
        <source>settles in %1 s, hold at least %2 s</source>
        <translation>schwingt in %1 s ein, mindestens %2 s halten</translation>
    </message>
    <message>
        <source>shares of a test range</source>
        <translation>Anteile eines Prüfbereichs</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>kürzestes</translation>
    </message>
    <message>
        <source>show all, show the chosen span</source>
        <translation>alles zeigen, den gewählten Abschnitt zeigen</translation>
    </message>
    <message>
        <source>shunt </source>
        <translation>Shunt </translation>
    </message>
    <message>
        <source>shunt %1</source>
        <translation>Shunt %1</translation>
    </message>
    <message>
        <source>simulated</source>
        <translation>simuliert</translation>
    </message>
    <message>
        <source>simulated load </source>
        <translation>simulierte Last </translation>
    </message>
    <message>
        <source>simulated strain </source>
        <translation>simulierte Dehnung </translation>
    </message>
    <message>
        <source>split at the cursor</source>
        <translation>am Cursor teilen</translation>
    </message>
    <message>
        <source>standard uncertainties</source>
        <translation>Standardunsicherheiten</translation>
    </message>
    <message>
        <source>standardised</source>
        <translation>standardisiert</translation>
    </message>
    <message>
        <source>stated</source>
        <translation>angegeben</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>bleibt, wie er ist</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>Stufe %1</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>strain, µm/m</source>
        <translation>Dehnung, µm/m</translation>
    </message>
    <message>
        <source>structure floating</source>
        <translation>Struktur potentialfrei</translation>
    </message>
    <message>
        <source>structure floating: no return path</source>
        <translation>Struktur potentialfrei: kein Rückweg</translation>
    </message>
    <message>
        <source>structure on P+</source>
        <translation>Struktur an P+</translation>
    </message>
    <message>
        <source>structure on P−</source>
        <translation>Struktur an P−</translation>
    </message>
    <message>
        <source>such as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>symmetric</source>
        <translation>symmetrisch</translation>
    </message>
    <message>
        <source>take the span from its step</source>
        <translation>den Abschnitt seiner Stufe nehmen</translation>
    </message>
    <message>
        <source>taken up</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>takes no current</source>
        <translation>nimmt keinen Strom</translation>
    </message>
    <message>
        <source>the balance network</source>
        <translation>das Abgleichnetzwerk</translation>
    </message>
    <message>
        <source>the block has %1 rows, but only %2 are there from the chosen cell on</source>
        <translation>der Block hat %1 Zeilen, ab der gewählten Zelle gibt es aber nur %2</translation>
    </message>
    <message>
        <source>the input resistance</source>
        <translation>der Eingangswiderstand</translation>
    </message>
    <message>
        <source>the instrument</source>
        <translation>das Gerät</translation>
    </message>
    <message>
        <source>the leak from arm %1 to the structure</source>
        <translation>der Nebenschluss von Zweig %1 zur Struktur</translation>
    </message>
    <message>
        <source>the leak of arm %1 carries </source>
        <translation>der Nebenschluss von Zweig %1 führt </translation>
    </message>
    <message>
        <source>the leak over arm %1</source>
        <translation>der Nebenschluss über Zweig %1</translation>
    </message>
    <message>
        <source>the leak over arm %1 carries </source>
        <translation>der Nebenschluss über Zweig %1 führt </translation>
    </message>
    <message>
        <source>the parts are from here</source>
        <translation>die Widerstände stammen von hier</translation>
    </message>
    <message>
        <source>the resistor of arm %1</source>
        <translation>der Widerstand von Zweig %1</translation>
    </message>
    <message>
        <source>the sample rate</source>
        <translation>die Abtastrate</translation>
    </message>
    <message>
        <source>the sense leads</source>
        <translation>die Fühlerleitungen</translation>
    </message>
    <message>
        <source>the span begins, ends at the cursor</source>
        <translation>der Abschnitt beginnt, endet am Cursor</translation>
    </message>
    <message>
        <source>the stock, %1 entries</source>
        <translation>der Bestand, %1 Einträge</translation>
    </message>
    <message>
        <source>the stock, 1 entry</source>
        <translation>der Bestand, 1 Eintrag</translation>
    </message>
    <message>
        <source>the stock, which is empty</source>
        <translation>der Bestand, der leer ist</translation>
    </message>
    <message>
        <source>the wiper</source>
        <translation>der Schleifer</translation>
    </message>
    <message>
        <source>theirs</source>
        <translation>ihre</translation>
    </message>
    <message>
        <source>this list</source>
        <translation>diese Liste</translation>
    </message>
    <message>
        <source>this plan</source>
        <translation>dieser Plan</translation>
    </message>
    <message>
        <source>this reading becomes the zero</source>
        <translation>dieser Messwert wird die Null</translation>
    </message>
    <message>
        <source>to</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>to S+ </source>
        <translation>zu S+ </translation>
    </message>
    <message>
        <source>to structure</source>
        <translation>zur Struktur</translation>
    </message>
    <message>
        <source>triangular</source>
        <translation>dreieckig</translation>
    </message>
    <message>
        <source>type the rate, such as 50 Hz</source>
        <translation>die Rate eintippen, etwa 50 Hz</translation>
    </message>
    <message>
        <source>u of gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>u of the trials</source>
        <translation>u der Versuche</translation>
    </message>
    <message>
        <source>u of zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainties</source>
        <translation>Unsicherheiten</translation>
    </message>
    <message>
        <source>unchanged</source>
        <translation>unverändert</translation>
    </message>
    <message>
        <source>unequal arms, reversed wires, leaks, several shunts at once</source>
        <translation>ungleiche Zweige, vertauschte Leitungen, Nebenschlüsse, mehrere Shunts zugleich</translation>
    </message>
    <message>
        <source>unit taken</source>
        <translation>angenommene Einheit</translation>
    </message>
    <message>
        <source>unplugged</source>
        <translation>abgesteckt</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>unbenannt</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>bis zu</translation>
    </message>
    <message>
        <source>voltage, mV</source>
        <translation>Spannung, mV</translation>
    </message>
    <message>
        <source>waits for you</source>
        <translation>wartet auf eine Wahl</translation>
    </message>
    <message>
        <source>waits its turn</source>
        <translation>wartet in der Reihe</translation>
    </message>
    <message>
        <source>what the instrument shows</source>
        <translation>was das Gerät zeigt</translation>
    </message>
    <message>
        <source>what the reading will be, within 5 %</source>
        <translation>was der Messwert sein wird, auf 5 % genau</translation>
    </message>
    <message>
        <source>what was seen while the reading was taken</source>
        <translation>was beim Ablesen zu sehen war</translation>
    </message>
    <message>
        <source>which arm the shunt must lie over</source>
        <translation>über welchem Zweig der Shunt liegen muss</translation>
    </message>
    <message>
        <source>which fault explains the readings</source>
        <translation>welcher Fehler die Messwerte erklärt</translation>
    </message>
    <message>
        <source>which is moved: end, both, begin</source>
        <translation>was bewegt wird: Ende, beide, Anfang</translation>
    </message>
    <message>
        <source>which of two shunts gives the larger reading</source>
        <translation>welcher von zwei Shunts den größeren Messwert ergibt</translation>
    </message>
    <message>
        <source>which way the output goes</source>
        <translation>in welche Richtung das Signal geht</translation>
    </message>
    <message>
        <source>who ran it</source>
        <translation>wer sie durchgeführt hat</translation>
    </message>
    <message>
        <source>who runs the checks</source>
        <translation>wer die Prüfungen durchführt</translation>
    </message>
    <message>
        <source>wires</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>Verdrahtung</translation>
    </message>
    <message>
        <source>with each resistor at the end of its tolerance</source>
        <translation>mit jedem Widerstand am Ende seiner Toleranz</translation>
    </message>
    <message>
        <source>with its sign</source>
        <translation>mit Vorzeichen</translation>
    </message>
    <message>
        <source>with parts overdue for calibration</source>
        <translation>mit Widerständen, deren Kalibrierung überfällig ist</translation>
    </message>
    <message>
        <source>with question %1 of %2 · %3 · seed %4%5</source>
        <translation>mit Aufgabe %1 von %2 · %3 · Startzahl %4%5</translation>
    </message>
    <message>
        <source>with the same difficulty, kinds and number of questions it gives the same questions, on every computer</source>
        <translation>mit derselben Schwierigkeit, denselben Arten und derselben Anzahl ergibt sie dieselben Aufgaben, auf jedem Rechner</translation>
    </message>
    <message>
        <source>within margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>working…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>zero</source>
        <translation>null</translation>
    </message>
    <message>
        <source>zoom about the cursor</source>
        <translation>um den Cursor zoomen</translation>
    </message>
    <message>
        <source>{nn} counts with two digits, {name} is the present name, {group} the group, {column} the recording column.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>±</source>
        <translation>±</translation>
    </message>
    <message>
        <source>± 2 u</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no longer among your own patterns.</source>
        <translation>„%1“ ist nicht mehr unter den eigenen Mustern.</translation>
    </message>
    <message>
        <source>“%1” is saved for all documents.</source>
        <translation>„%1“ ist für alle Dokumente gespeichert.</translation>
    </message>
    <message>
        <source>→ ← step · Home End · 1 bridge  2 polarity  3 sequence  4 outcome · + − letters · D dark, light · C currents · Esc ends</source>
        <translation>→ ← Stufe · Pos1 Ende · 1 Brücke  2 Polarität  3 Ablauf  4 Ergebnis · + − Schrift · D dunkel, hell · C Ströme · Esc beendet</translation>
    </message>
    <message>
        <source>− negative</source>
        <translation>− negativ</translation>
    </message>
    <message>
        <source>□ without
■ with it</source>
        <translation>□ ohne
■ damit</translation>
    </message>
    <message>
        <source>▲ depend on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ gain and zero beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ gain beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ warning</source>
        <translation>▲ Warnung</translation>
    </message>
    <message>
        <source>▲ zero beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◆ fault</source>
        <translation>◆ Fehler</translation>
    </message>
    <message>
        <source>○ terminal  ● gauge end</source>
        <translation>○ Anschluss  ● DMS-Ende</translation>
    </message>
    <message>
        <source>● note</source>
        <translation>● Hinweis</translation>
    </message>
    <message>
        <source>● within limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ Right.</source>
        <translation>✓ Richtig.</translation>
    </message>
    <message>
        <source>✓ Right: %1. Your %2 is %3 % off.</source>
        <translation>✓ Richtig: %1. Die Eingabe %2 weicht um %3 % ab.</translation>
    </message>
    <message>
        <source>✓ right</source>
        <translation>✓ richtig</translation>
    </message>
    <message>
        <source>✗ Wrong. Right is: %1.</source>
        <translation>✗ Falsch. Richtig ist: %1.</translation>
    </message>
    <message>
        <source>✗ Wrong: you said %1. Right is %2.</source>
        <translation>✗ Falsch: Antwort war %1. Richtig ist %2.</translation>
    </message>
    <message>
        <source>✗ wrong</source>
        <translation>✗ falsch</translation>
    </message>
</context>
</TS>

// Package allot finds the best use of what is in hand: each subject, a nuc
// say, has ways of which one is chosen; a way has a worth, may take one of a
// supply, and takes minutes; unions take two subjects at once. It knows
// numbers and nothing of bees.
//
// Without a limit on minutes and without unions the answer is exact: a flow
// of most worth, by successive best paths over the few supplies (Ahuja,
// Magnanti and Orlin, Network Flows, 1993, section 9.7). Minutes and unions
// make it a hard problem: a price on minutes (Fisher, Management Science 27,
// 1981) and a split of each union's worth give an upper bound, and branch and
// bound closes what is left as far as its work goes; the answer says how far.
package allot

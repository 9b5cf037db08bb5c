-- The line of each act on a performance attests these rows of it.
create index remark_of_performance on remark (performance_id);
create index remark_seen_of_performance on remark_seen (performance_id);
create index panel_change_of_performance on panel_change (performance_id);

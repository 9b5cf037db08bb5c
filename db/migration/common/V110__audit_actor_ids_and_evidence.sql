-- Who acted, for ever: names change, and two people can have the same. The form says which fields the digest of a
-- line covers: lines of form 1 were written before and have no identity, lines of form 2 have one. Evidence is the
-- digest of what is stored of the thing after the act, where that is told of anything but the line itself.
alter table record_line add column form int default 1 not null;
alter table record_line add column actor_id varchar(130) default '' not null;
alter table record_line add column evidence varchar(64) default '' not null;

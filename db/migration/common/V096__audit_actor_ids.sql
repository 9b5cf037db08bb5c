-- Who acted, for ever: names change, and two people can have the same. The form says which fields the digest of a
-- line covers: lines of form 1 were written before and have no identity, lines of form 2 have one.
alter table record_line add column form int default 1 not null;
alter table record_line add column actor_id varchar(130) default '' not null;
